//! An object of keys, read value by value: each is handed on by its name.

use core::cell::RefCell;
use core::fmt;
use std::borrow::Cow;

use serde::de::{DeserializeSeed, Deserializer, Error as _, MapAccess, SeqAccess, Visitor};
use threadcalc_core::{Code, Dialect, Error, Field, Length, Value, read_number};

use super::Filled;
use crate::status::Fault;

/// What is known of a job while it is read. A fault stands here because the reader's own error holds text only.
pub(super) struct Reading<'f> {
    pub filled: &'f mut dyn Filled,
    pub seen: Vec<String>,
    pub fault: Option<Fault>,
}

impl Reading<'_> {
    fn set(&mut self, key: &str, value: Value<'_>) -> Result<(), ()> {
        self.filled.set(key, value).map_err(|error| self.fail(error, key))
    }

    fn fail(&mut self, error: Error, key: &str) {
        self.fault = Some(Fault { error, key: Some(key.into()) });
    }
}

/// An object of keys: the job itself, its machine, its screw or its dialect.
#[derive(Clone, Copy)]
pub(super) struct Keys<'a, 'f> {
    pub reading: &'a RefCell<Reading<'f>>,
    pub prefix: &'a str,
    pub beside: Option<&'a str>,
}

impl<'de> DeserializeSeed<'de> for Keys<'_, '_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_map(self)
    }
}

impl<'de> Visitor<'de> for Keys<'_, '_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a job")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<(), A::Error> {
        while let Some(key) = map.next_key::<Cow<'de, str>>()? {
            let key = [self.prefix, &key].concat();
            {
                let mut reading = self.reading.borrow_mut();
                if reading.seen.contains(&key) {
                    reading.fail(Error::new(Code::BadJson, Field::Key).hint_text("this key stands here twice"), &key);
                    return Err(A::Error::custom(""));
                }
                reading.seen.push(key.clone());
            }
            if self.prefix.is_empty() && self.beside == Some(key.as_str()) {
                map.next_value::<serde::de::IgnoredAny>()?;
            } else {
                map.next_value_seed(OneValue { keys: self, key: &key })?;
            }
        }
        Ok(())
    }
}

/// The value of one key.
#[derive(Clone, Copy)]
struct OneValue<'a, 'f> {
    keys: Keys<'a, 'f>,
    key: &'a str,
}

impl OneValue<'_, '_> {
    fn is_group(&self, key: &str) -> bool {
        self.keys.reading.borrow().filled.is_group(key)
    }

    fn set<E: serde::de::Error>(self, value: Value<'_>) -> Result<(), E> {
        self.keys.reading.borrow_mut().set(self.key, value).map_err(|()| E::custom(""))
    }

    fn wrong_shape<E: serde::de::Error>(self, hint: &'static str) -> E {
        let mut reading = self.keys.reading.borrow_mut();
        // A key that is not known is told as such, whatever stands behind it.
        if reading.set(self.key, Value::Absent).is_ok() {
            reading.fail(Error::new(Code::UnknownValue, Field::Key).hint_text(hint), self.key);
        }
        E::custom("")
    }
}

impl<'de> DeserializeSeed<'de> for OneValue<'_, '_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for OneValue<'_, '_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a value")
    }

    fn visit_unit<E: serde::de::Error>(self) -> Result<(), E> {
        self.set(Value::Absent)
    }

    fn visit_bool<E: serde::de::Error>(self, flag: bool) -> Result<(), E> {
        self.set(Value::Flag(flag))
    }

    fn visit_i64<E: serde::de::Error>(self, number: i64) -> Result<(), E> {
        self.set(Length::new(number, 1).map_or(Value::Double(number as f64), Value::Exact))
    }

    fn visit_u64<E: serde::de::Error>(self, number: u64) -> Result<(), E> {
        // Beyond 63 bits the core says what it says of such a double: it does not fit.
        let whole = i64::try_from(number);
        self.set(whole.map_or(Value::Double(number as f64), |whole| Value::Exact(Length::integer(whole))))
    }

    fn visit_f64<E: serde::de::Error>(self, number: f64) -> Result<(), E> {
        self.set(Value::Double(number))
    }

    fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<(), E> {
        self.set(Value::Text(text.as_bytes()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<(), A::Error> {
        match self.key {
            "drill_sets" => while list.next_element_seed(SetName(self))?.is_some() {},
            "drill_list" => while list.next_element_seed(OneDrill(self))?.is_some() {},
            "machine.gears" => while list.next_element_seed(OneGear(self))?.is_some() {},
            key if self.keys.reading.borrow().filled.is_list_of_objects(key) => {
                while list.next_element_seed(OneObject(self))?.is_some() {}
            }
            key if key.strip_prefix("dialect.").is_some_and(Dialect::takes_codes) => {
                let mut codes = String::new();
                while let Some(code) = list.next_element::<Cow<'de, str>>()? {
                    codes.push_str(&code);
                    codes.push(' ');
                }
                self.set(Value::Text(codes.trim_end().as_bytes()))?;
            }
            key if self.is_group(key) => return Err(self.wrong_shape("an object, not a list")),
            _ => return Err(self.wrong_shape("one value, not a list")),
        }
        Ok(())
    }

    fn visit_map<A: MapAccess<'de>>(self, map: A) -> Result<(), A::Error> {
        if !self.is_group(self.key) {
            return Err(self.wrong_shape("one value, not an object"));
        }
        Keys { prefix: &[self.key, "."].concat(), ..self.keys }.visit_map(map)
    }
}

/// One object of a list of them: its keys are as new.
struct OneObject<'a, 'f>(OneValue<'a, 'f>);

impl<'de> DeserializeSeed<'de> for OneObject<'_, '_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        let prefix = [self.0.key, "."].concat();
        {
            let mut reading = self.0.keys.reading.borrow_mut();
            reading.seen.retain(|key| !key.starts_with(&prefix));
            reading.filled.begin_object(self.0.key);
        }
        deserializer.deserialize_map(Keys { prefix: &prefix, ..self.0.keys })
    }
}

/// One name of the list of drill sets: a text, nothing nested.
struct SetName<'a, 'f>(OneValue<'a, 'f>);

impl<'de> DeserializeSeed<'de> for SetName<'_, '_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_str(self)
    }
}

impl<'de> Visitor<'de> for SetName<'_, '_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("the name of a set of drills")
    }

    fn visit_str<E: serde::de::Error>(self, name: &str) -> Result<(), E> {
        self.0.set(Value::Text(name.as_bytes()))
    }
}

/// One drill of the list of drills: a name or a diameter, nothing nested.
struct OneDrill<'a, 'f>(OneValue<'a, 'f>);

impl<'de> DeserializeSeed<'de> for OneDrill<'_, '_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for OneDrill<'_, '_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("the name or the diameter of a drill")
    }

    fn visit_i64<E: serde::de::Error>(self, number: i64) -> Result<(), E> {
        self.0.visit_i64(number)
    }

    fn visit_u64<E: serde::de::Error>(self, number: u64) -> Result<(), E> {
        self.0.visit_u64(number)
    }

    fn visit_f64<E: serde::de::Error>(self, number: f64) -> Result<(), E> {
        self.0.visit_f64(number)
    }

    fn visit_str<E: serde::de::Error>(self, name: &str) -> Result<(), E> {
        self.0.visit_str(name)
    }
}

/// One gear of the list of gears: a list of numbers.
struct OneGear<'a, 'f>(OneValue<'a, 'f>);

impl<'de> DeserializeSeed<'de> for OneGear<'_, '_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_seq(self)
    }
}

impl<'de> Visitor<'de> for OneGear<'_, '_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("the numbers of a gear")
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<(), A::Error> {
        let mut numbers = Vec::new();
        while let Some(number) = list.next_element_seed(GearNumber(self.0))? {
            // More than any gear has: the core says how many it takes.
            if numbers.len() < 32 {
                numbers.push(number);
            }
        }
        self.0.set(Value::Numbers(&numbers))
    }
}

/// One number of a gear: a JSON number, or a text where it has to be exact.
struct GearNumber<'a, 'f>(OneValue<'a, 'f>);

impl GearNumber<'_, '_> {
    fn held<E: serde::de::Error>(self, number: Result<Length, Error>) -> Result<Length, E> {
        number.map_err(|error| {
            self.0.keys.reading.borrow_mut().fail(error.about(Field::MachineGears), self.0.key);
            E::custom("")
        })
    }
}

impl<'de> DeserializeSeed<'de> for GearNumber<'_, '_> {
    type Value = Length;

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<Length, D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for GearNumber<'_, '_> {
    type Value = Length;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a number of a gear")
    }

    fn visit_i64<E: serde::de::Error>(self, number: i64) -> Result<Length, E> {
        self.held(Length::new(number, 1))
    }

    fn visit_u64<E: serde::de::Error>(self, number: u64) -> Result<Length, E> {
        // Beyond 63 bits the core says what it says of such a double: it does not fit.
        self.held(i64::try_from(number).map_or_else(|_| Length::from_f64(number as f64), |whole| Length::new(whole, 1)))
    }

    fn visit_f64<E: serde::de::Error>(self, number: f64) -> Result<Length, E> {
        self.held(Length::from_f64(number))
    }

    fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Length, E> {
        self.held(read_number(text.as_bytes()))
    }
}
