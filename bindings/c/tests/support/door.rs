//! A formula behind its two functions, whatever the number of its inputs.

use overwater_c::error::ow_error;

type Number = Box<dyn Fn(&[f64], *mut f64, *mut ow_error) -> i32 + Sync>;
type Columns = Box<dyn Fn(usize, &[(*const f64, isize)], *mut f64, isize, *mut ow_error) -> i32 + Sync>;

/// A formula of the catalogue as C sees it.
pub(crate) struct Door {
    /// Its name in the catalogue.
    pub(crate) name: &'static str,
    /// One set of numbers.
    pub(crate) number: Number,
    /// Columns.
    pub(crate) columns: Columns,
}

macro_rules! door {
    ($plain:ident, $gas:ident, $($place:literal),*) => {
        macro_rules! $plain {
            ($name:ident, $room:path, $array:path) => {
                Door {
                    name: stringify!($name),
                    number: Box::new(|v, result, error| unsafe { $room($(v[$place],)* result, error) }),
                    columns: Box::new(|count, c, result, stride, error| unsafe {
                        $array(count, $(c[$place].0, c[$place].1,)* result, stride, error)
                    }),
                }
            };
        }
        #[allow(unused_macros)] // No gas has a formula of four inputs or more.
        macro_rules! $gas {
            ($name:ident, $number:literal, $room:path, $array:path) => {
                Door {
                    name: stringify!($name),
                    number: Box::new(|v, result, error| unsafe {
                        $room($number, $(v[$place],)* result, error)
                    }),
                    columns: Box::new(|count, c, result, stride, error| unsafe {
                        $array($number, count, $(c[$place].0, c[$place].1,)* result, stride, error)
                    }),
                }
            };
        }
        #[allow(unused_imports)]
        pub(crate) use {$plain, $gas};
    };
}

door!(plain1, gas1, 0);
door!(plain2, gas2, 0, 1);
door!(plain3, gas3, 0, 1, 2);
door!(plain4, gas4, 0, 1, 2, 3);
door!(plain5, gas5, 0, 1, 2, 3, 4);
door!(plain6, gas6, 0, 1, 2, 3, 4, 5);
