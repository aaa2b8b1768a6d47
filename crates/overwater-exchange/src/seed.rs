//! Seeds. Not every language holds whole numbers beyond 2^53, so that larger seeds are written as texts.

use std::fmt;

use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::de::{Deserialize, Deserializer, Error, Visitor};
use serde::ser::{Serialize, Serializer};

/// The greatest whole number up to which every one is a double.
const GREATEST_NUMBER: u64 = 1 << 53;

/// A seed: a whole number, as a number up to 2^53 and as a text beyond.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Seed(pub u64);

impl fmt::Display for Seed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.fmt(f)
    }
}

impl Serialize for Seed {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        if self.0 <= GREATEST_NUMBER {
            serializer.serialize_u64(self.0)
        } else {
            serializer.collect_str(&self.0)
        }
    }
}

impl<'de> Deserialize<'de> for Seed {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Read;

        impl Visitor<'_> for Read {
            type Value = Seed;

            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a whole number from 0 to 2^53, or a text of digits up to 2^64 - 1")
            }

            fn visit_u64<E: Error>(self, number: u64) -> Result<Seed, E> {
                if number <= GREATEST_NUMBER {
                    return Ok(Seed(number));
                }
                Err(E::custom(format!("a seed beyond 2^53 is written as a text: \"{number}\"")))
            }

            fn visit_i64<E: Error>(self, number: i64) -> Result<Seed, E> {
                match u64::try_from(number) {
                    Ok(number) => self.visit_u64(number),
                    Err(_) => Err(E::custom("a seed is not negative")),
                }
            }

            fn visit_str<E: Error>(self, text: &str) -> Result<Seed, E> {
                let digits = !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
                match text.parse() {
                    Ok(number) if digits => Ok(Seed(number)),
                    _ => Err(E::custom("a seed is a whole number of at most 18446744073709551615")),
                }
            }
        }

        deserializer.deserialize_any(Read)
    }
}

impl JsonSchema for Seed {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Seed".into()
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "description": "A whole number, as a number up to 2^53 and as a text beyond.",
            "anyOf": [
                { "type": "integer", "minimum": 0, "maximum": GREATEST_NUMBER },
                { "type": "string", "pattern": "^[0-9]{1,20}$" }
            ]
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_seed_is_a_number_as_long_as_every_language_holds_it() {
        for (seed, written) in [
            (0, "0"),
            (9_007_199_254_740_992, "9007199254740992"),
            (9_007_199_254_740_993, "\"9007199254740993\""),
            (u64::MAX, "\"18446744073709551615\""),
        ] {
            assert_eq!(serde_json::to_string(&Seed(seed)).unwrap(), written);
            assert_eq!(serde_json::from_str::<Seed>(written).unwrap(), Seed(seed));
        }
        assert_eq!(serde_json::from_str::<Seed>("\"7\"").unwrap(), Seed(7));
        for wrong in ["9007199254740993", "-1", "1.5", "\"\"", "\"+1\"", "\"18446744073709551616\"", "true"] {
            assert!(serde_json::from_str::<Seed>(wrong).is_err(), "{wrong}");
        }
    }
}
