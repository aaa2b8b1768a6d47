//! The functions for formulas give what the core gives, to the bit, wherever the numbers lie.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)] // A test fails by panicking.
#![allow(clippy::undocumented_unsafe_blocks)] // What is pointed to lives in the same function.

mod support {
    pub(crate) mod details;
    pub(crate) mod door;
    pub(crate) mod doors;
}

use overwater::catalogue::{self, AnyFormula};
use overwater_c::elementwise::collected::{ow_dry_amount, ow_dry_amount_array};
use overwater_c::elementwise::species::{ow_second_virial, ow_second_virial_array};
use overwater_c::elementwise::vapour::{ow_vapour_pressure, ow_vapour_pressure_array};
use overwater_c::gas::{OW_GAS_OXYGEN, OW_GAS_OZONE};
use overwater_c::status;
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use support::{details::details, door::Door, doors::doors};

fn formula(door: &Door) -> Box<dyn AnyFormula> {
    catalogue::find(door.name).unwrap()
}

#[test]
fn every_formula_has_its_functions_once() {
    let mut names: Vec<&str> = doors().iter().map(|door| door.name).collect();
    let all = catalogue::all();
    let mut known: Vec<&str> = all.iter().map(|formula| formula.name()).collect();
    names.sort_unstable();
    known.sort_unstable();
    assert_eq!(names, known);
}

/// Values inside, on and beyond the limits of an input.
fn value(least: f64, greatest: f64) -> impl Strategy<Value = f64> {
    prop_oneof![
        8 => least..=greatest,
        1 => prop_oneof![Just(least), Just(greatest), Just(least.next_down()), Just(greatest.next_up())],
        1 => prop_oneof![Just(f64::NAN), Just(f64::INFINITY), Just(f64::NEG_INFINITY), Just(-0.0), any::<f64>()],
    ]
}

fn same(a: f64, b: f64) -> bool {
    a.to_bits() == b.to_bits() || (a.is_nan() && b.is_nan())
}

#[test]
fn one_number_is_the_core_s_to_the_bit_and_a_refusal_says_what_the_core_says() {
    for door in doors() {
        let formula = formula(&door);
        let inputs: Vec<_> = formula.inputs().iter().map(|b| value(b.least, b.greatest).boxed()).collect();
        let mut refused = 0;
        let mut runner =
            TestRunner::new(Config { cases: 60, failure_persistence: None, ..Config::default() });
        runner
            .run(&inputs, |values| {
                let mut result = 7.0;
                let refusal = details(|error| (door.number)(&values, &raw mut result, error));
                let quiet = (door.number)(&values, &raw mut result, std::ptr::null_mut());
                match (formula.number(&values), refusal) {
                    (Ok(number), None) => {
                        prop_assert_eq!((result.to_bits(), quiet), (number.to_bits(), status::OW_OK));
                    }
                    (Err(expected), Some(found)) => {
                        prop_assert!(result.is_nan());
                        prop_assert_eq!(found.status, quiet);
                        prop_assert_eq!(&found.code, expected.code.name());
                        prop_assert_eq!(&found.parameter, &*expected.parameter);
                        prop_assert_eq!(&found.message, &expected.to_string());
                        let place = formula.inputs().iter().position(|b| b.name == expected.parameter);
                        prop_assert!(same(found.value, place.map_or(f64::NAN, |place| values[place])));
                    }
                    (core, c) => prop_assert!(false, "{}: {core:?} against {c:?}", door.name),
                }
                Ok(())
            })
            .unwrap();
        for (place, bound) in formula.inputs().iter().enumerate() {
            let mut values: Vec<f64> = formula.inputs().iter().map(|b| b.least).collect();
            values[place] = bound.greatest.next_up();
            refused += i32::from((door.number)(&values, &mut 0.0, std::ptr::null_mut()) != status::OW_OK);
        }
        assert!(refused > 0, "{} refuses nothing", door.name);
    }
}

/// Where a column lies in a block of bytes: bytes before it, and from row to row.
#[derive(Debug, Clone, Copy)]
struct Place {
    offset: usize,
    stride: isize,
}

fn place() -> impl Strategy<Value = Place> {
    let stride = prop_oneof![4 => Just(8_isize), 2 => 8..80_isize, 1 => -80..-7_isize, 1 => Just(-8_isize)];
    (prop_oneof![3 => Just(0_usize), 1 => 1..16_usize], stride)
        .prop_map(|(offset, stride)| Place { offset, stride })
}

/// A column in memory of its own, every byte of which is known before.
struct Memory {
    block: Vec<u64>,
    place: Place,
}

impl Memory {
    fn new(place: Place, count: usize) -> Memory {
        let bytes = place.offset + count.max(1) * place.stride.unsigned_abs() + 16;
        Memory { block: vec![0x5555_5555_5555_5555; bytes.div_ceil(8)], place }
    }

    fn row(&mut self, row: usize, count: usize) -> *mut f64 {
        let steps = if self.place.stride < 0 { count - 1 - row } else { row };
        let byte = self.place.offset + steps * self.place.stride.unsigned_abs();
        self.block.as_mut_ptr().cast::<u8>().wrapping_add(byte).cast()
    }

    fn untouched(&self) -> usize {
        let bytes = self.block.iter().flat_map(|word| word.to_ne_bytes());
        bytes.filter(|byte| *byte == 0x55).count()
    }
}

#[test]
fn columns_are_the_core_s_to_the_bit_for_any_stride_and_offset_and_nothing_else_is_written() {
    // One block and less, just about one, and more than two.
    let counts = prop_oneof![6 => 1..30_usize, 1 => 254..259_usize, 1 => 514..522_usize];
    for door in doors() {
        let formula = formula(&door);
        let row: Vec<_> = formula.inputs().iter().map(|b| value(b.least, b.greatest).boxed()).collect();
        let width = row.len();
        let cases = counts.clone().prop_flat_map(move |count| {
            (prop::collection::vec(row.clone(), count), prop::collection::vec(place(), width), place())
        });
        let mut runner = TestRunner::new(Config { cases: 8, failure_persistence: None, ..Config::default() });
        runner
            .run(&cases, |(rows, places, result)| {
                let count = rows.len();
                let mut inputs: Vec<Memory> = places.iter().map(|place| Memory::new(*place, count)).collect();
                for (column, input) in inputs.iter_mut().enumerate() {
                    for (row, values) in rows.iter().enumerate() {
                        unsafe { input.row(row, count).write_unaligned(values[column]) };
                    }
                }
                let columns: Vec<(*const f64, isize)> = inputs
                    .iter_mut()
                    .map(|input| (input.row(0, count).cast_const(), input.place.stride))
                    .collect();
                let mut memory = Memory::new(result, count);
                let start = memory.row(0, count);
                let before = memory.untouched();
                let status = (door.columns)(count, &columns, start, result.stride, std::ptr::null_mut());
                prop_assert_eq!(status, status::OW_OK);
                for (row, values) in rows.iter().enumerate() {
                    let found = unsafe { memory.row(row, count).read_unaligned() };
                    let expected = formula.number(values).unwrap_or(f64::NAN);
                    prop_assert!(same(found, expected), "{} row {row}: {found} {expected}", door.name);
                    unsafe { memory.row(row, count).write_unaligned(f64::from_bits(0x5555_5555_5555_5555)) };
                }
                prop_assert_eq!(memory.untouched(), before, "written beside the rows");
                Ok(())
            })
            .unwrap();
    }
}

const READING: [f64; 4] = [86.5, 21.0, 100.36, 12.0];

#[test]
fn in_place_between_structs_and_with_one_number_for_all_rows() {
    // Structs of five numbers: four inputs, and room for the result; more than one block of them.
    let mut structs: Vec<[f64; 5]> =
        (0..600).map(|i| [50.0 + f64::from(i) / 10.0, 21.0, 100.36, 12.0, 0.0]).collect();
    let expected: Vec<f64> =
        structs.iter().map(|s| catalogue::find("dry_amount").unwrap().number(&s[..4]).unwrap()).collect();
    let start: *mut f64 = structs.as_mut_ptr().cast();
    let pressure_kpa = 100.36;
    // SAFETY: every column lies in the structs, but for the one number.
    let status = unsafe {
        let field = |place: usize| start.add(place).cast_const();
        let (temperature, level) = (field(1), field(3));
        ow_dry_amount_array(
            600,
            field(0),
            40,
            temperature,
            40,
            &raw const pressure_kpa,
            0,
            level,
            40,
            start.add(4),
            40,
            std::ptr::null_mut(),
        )
    };
    assert_eq!(status, status::OW_OK);
    assert_eq!(structs.iter().map(|s| s[4]).collect::<Vec<_>>(), expected);

    // The result over the temperatures themselves, as structs and as an array; backwards too.
    for stride in [8_isize, 40, -8] {
        let temperatures: Vec<f64> = (0..600).map(|i| f64::from(i) / 6.0).collect();
        let mut column = vec![0.0; 600 * 5];
        let place = |row: usize| if stride < 0 { 599 - row } else { row * (stride as usize / 8) };
        for (row, temperature) in temperatures.iter().enumerate() {
            column[place(row)] = *temperature;
        }
        let first: *mut f64 = &raw mut column[place(0)];
        // SAFETY: inside the column.
        let status =
            unsafe { ow_vapour_pressure_array(600, first, stride, first, stride, std::ptr::null_mut()) };
        assert_eq!(status, status::OW_OK);
        let formula = catalogue::find("vapour_pressure").unwrap();
        for (row, temperature) in temperatures.iter().enumerate() {
            assert_eq!(column[place(row)], formula.number(&[*temperature]).unwrap(), "{stride} {row}");
        }
    }
}

#[test]
fn a_published_value_comes_through() {
    let mut pressure_kpa = 0.0;
    // CRC Handbook of Chemistry and Physics, vapour pressure of water: 2.3388 kPa at 20 degC.
    // SAFETY: both point to something that lives.
    let status = unsafe { ow_vapour_pressure(20.0, &raw mut pressure_kpa, std::ptr::null_mut()) };
    assert_eq!(status, status::OW_OK);
    assert!((pressure_kpa - 2.3388).abs() < 5e-4, "{pressure_kpa}");
}

#[test]
fn misuse_is_told_and_nothing_is_written() {
    let mut result = [5.0; 3];
    let here: *mut f64 = result.as_mut_ptr();
    let temperature = [20.0; 3];
    let from = temperature.as_ptr();
    let null = std::ptr::null_mut();
    // SAFETY: what is not NULL lives; what overlaps or does not fit is refused before it is touched.
    unsafe {
        assert_eq!(ow_vapour_pressure_array(0, null, 0, null, 0, std::ptr::null_mut()), status::OW_OK);
        for (count, input, input_stride, output, stride, expected, name) in [
            (3, std::ptr::null(), 8, here, 8, status::OW_NULL, "temperature_c"),
            (3, from, 8, null, 8, status::OW_NULL, "result"),
            (3, from, 1, here, 8, status::OW_STRIDE, "temperature_c"),
            (3, from, 8, here, 0, status::OW_STRIDE, "result"),
            (2, here.cast_const(), 8, here.wrapping_add(1), 8, status::OW_OVERLAP, "temperature_c"),
            (usize::MAX / 2, from, 8, here, 8, status::OW_OVERSIZE, "result"),
        ] {
            let told =
                details(|error| ow_vapour_pressure_array(count, input, input_stride, output, stride, error))
                    .unwrap();
            assert_eq!((told.status, &*told.parameter), (expected, name), "{told:?}");
            assert!(told.message.contains(name) && told.value.is_nan(), "{told:?}");
        }
        assert_eq!(result, [5.0; 3]);
        let told =
            details(|error| ow_dry_amount(READING[0], READING[1], READING[2], 12.0, null, error)).unwrap();
        assert_eq!((told.status, &*told.parameter, &*told.code), (status::OW_NULL, "result", "null"));
    }
}

#[test]
fn a_gas_that_is_not_known_or_has_no_data_is_told() {
    let mut result = 0.0;
    let mut column = [1.0; 2];
    // SAFETY: what is pointed to lives.
    unsafe {
        let told = details(|error| ow_second_virial(99, 20.0, &raw mut result, error)).unwrap();
        assert_eq!(
            (told.status, &*told.parameter, &*told.code),
            (status::OW_UNKNOWN_NAME, "gas", "unknown_name")
        );
        assert!(told.message.contains("99") && result.is_nan());
        let told = details(|error| ow_second_virial(OW_GAS_OZONE, 20.0, &raw mut result, error)).unwrap();
        assert_eq!((told.status, &*told.parameter), (status::OW_CANNOT_BE_MET, "gas"));
        let temperature_c = 20.0;
        let columns = |gas, result: *mut f64| {
            ow_second_virial_array(gas, 2, &raw const temperature_c, 0, result, 8, std::ptr::null_mut())
        };
        assert_eq!(columns(0, column.as_mut_ptr()), status::OW_UNKNOWN_NAME);
        assert_eq!(columns(OW_GAS_OZONE, column.as_mut_ptr()), status::OW_CANNOT_BE_MET);
        assert_eq!(column, [1.0; 2]);
        assert_eq!(columns(OW_GAS_OXYGEN, column.as_mut_ptr()), status::OW_OK);
        assert_eq!(
            ow_second_virial(OW_GAS_OXYGEN, 20.0, &raw mut result, std::ptr::null_mut()),
            status::OW_OK
        );
        assert_eq!(column, [result; 2]);
    }
}

#[test]
fn an_error_struct_of_another_size_is_refused_even_where_all_is_well() {
    let mut result = 1.0;
    let mut size = size_of::<overwater_c::error::ow_error>() - 8;
    // SAFETY: only the size is read from the struct.
    let status = unsafe { ow_vapour_pressure(20.0, &raw mut result, (&raw mut size).cast()) };
    assert_eq!((status, result), (status::OW_STRUCT_SIZE, 1.0));
    assert_eq!(overwater_c::error::ow_error_size(), size + 8);
}
