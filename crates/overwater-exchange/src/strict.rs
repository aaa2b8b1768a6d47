//! What JSON lets through and a request must not: the same key twice, and the character U+0000.

use std::collections::BTreeSet;
use std::fmt;

use serde::de::{Deserialize, Deserializer, Error, IgnoredAny, MapAccess, SeqAccess, Visitor};

/// Any value, read to see that it is in order and then forgotten.
#[derive(Debug, Clone, Copy)]
pub(crate) struct InOrder;

/// How the message for a text with U+0000 begins.
pub(crate) const ZERO_CHARACTER: &str = "the character U+0000";

impl<'de> Deserialize<'de> for InOrder {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(InOrder)
    }
}

impl<'de> Visitor<'de> for InOrder {
    type Value = InOrder;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a value")
    }

    fn visit_unit<E>(self) -> Result<InOrder, E> {
        Ok(InOrder)
    }

    fn visit_bool<E>(self, _: bool) -> Result<InOrder, E> {
        Ok(InOrder)
    }

    fn visit_i64<E>(self, _: i64) -> Result<InOrder, E> {
        Ok(InOrder)
    }

    fn visit_u64<E>(self, _: u64) -> Result<InOrder, E> {
        Ok(InOrder)
    }

    fn visit_f64<E>(self, _: f64) -> Result<InOrder, E> {
        Ok(InOrder)
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<InOrder, E> {
        if text.contains('\0') {
            return Err(E::custom(format!("{ZERO_CHARACTER} stands in a text")));
        }
        Ok(InOrder)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<InOrder, A::Error> {
        while items.next_element::<InOrder>()?.is_some() {}
        Ok(InOrder)
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<InOrder, A::Error> {
        let mut seen = BTreeSet::new();
        while let Some(key) = entries.next_key::<String>()? {
            if key.contains('\0') {
                return Err(A::Error::custom(format!("{ZERO_CHARACTER} stands in a key")));
            }
            if seen.contains(&key) {
                return Err(A::Error::custom(format!("duplicate field `{key}`")));
            }
            seen.insert(key);
            entries.next_value::<InOrder>()?;
        }
        Ok(InOrder)
    }
}

/// The task that an envelope names, where it names one in a text; whatever else it holds is not looked at.
pub(crate) fn task_of(text: &str) -> Option<String> {
    struct Task;

    impl<'de> Visitor<'de> for Task {
        type Value = Option<String>;

        fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
            f.write_str("an object")
        }

        fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Self::Value, A::Error> {
            let mut task = None;
            while let Some(key) = entries.next_key::<String>()? {
                if key == "task" {
                    task = Some(entries.next_value::<String>()?);
                } else {
                    entries.next_value::<IgnoredAny>()?;
                }
            }
            Ok(task)
        }
    }

    serde_json::Deserializer::from_str(text).deserialize_map(Task).ok().flatten()
}
