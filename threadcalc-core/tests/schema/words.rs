//! The words that the schemas are written with. A key is one line of a table: its name, its shape, what it is.

use std::fmt::Display;

use serde_json::{Map, Value, json};

/// What a value looks like: as a job is asked, and as the library writes it.
pub struct Shape {
    asked: Value,
    written: Value,
}

/// A key of an object.
pub struct Key {
    name: &'static str,
    shape: Shape,
    given: Given,
    description: &'static str,
}

/// Whether a key is there, and whether it is null.
#[derive(Clone, Copy, PartialEq)]
enum Given {
    /// A job has to have it.
    Always,
    /// A job need not have it; it is written as what stands for it then.
    Filled,
    /// A job need not have it; it is written as null then.
    OrNull,
}

/// A key that a job need not have; where it is not given it is written as null.
pub fn may(name: &'static str, shape: Shape, description: &'static str) -> Key {
    Key { name, shape, given: Given::OrNull, description }
}

/// A key that a job need not have, and that is never written as null.
pub fn filled(name: &'static str, shape: Shape, description: &'static str) -> Key {
    Key { name, shape, given: Given::Filled, description }
}

/// A key that is always there.
pub fn must(name: &'static str, shape: Shape, description: &'static str) -> Key {
    Key { name, shape, given: Given::Always, description }
}

fn same(shape: Value) -> Shape {
    Shape { asked: shape.clone(), written: shape }
}

/// An exact value. The bounds are those of a number: of a text, the pattern knows the sign only.
fn exact_in(definition: &str, bounds: &[(&str, f64)]) -> Shape {
    let mut asked = Map::from_iter([("$ref".into(), format!("#/$defs/{definition}").into())]);
    for (word, bound) in bounds {
        let whole = *bound as i64;
        let bound = if whole as f64 == *bound { json!(whole) } else { json!(bound) };
        asked.insert((*word).into(), bound);
    }
    Shape { asked: asked.into(), written: json!({ "$ref": "#/$defs/exact" }) }
}

pub fn exact() -> Shape {
    exact_in("asked", &[])
}

pub fn zero_or_more() -> Shape {
    exact_in("asked_zero_or_more", &[])
}

pub fn zero_to(most: f64) -> Shape {
    exact_in("asked_zero_or_more", &[("maximum", most)])
}

pub fn above_zero() -> Shape {
    exact_in("asked_above_zero", &[])
}

pub fn above_zero_to(most: f64) -> Shape {
    exact_in("asked_above_zero", &[("maximum", most)])
}

/// Both ends belong to the range; the lower one is above 0.
pub fn between(least: f64, most: f64) -> Shape {
    exact_in("asked_above_zero", &[("minimum", least), ("maximum", most)])
}

/// The upper end belongs to the range.
pub fn above(low: f64, most: f64) -> Shape {
    exact_in("asked_above_zero", &[("exclusiveMinimum", low), ("maximum", most)])
}

/// A whole exact value from 1.
pub fn count_to(most: i64) -> Shape {
    let asked = json!({ "type": ["integer", "string"], "minimum": 1, "maximum": most, "pattern": "^0*[1-9][0-9]*$" });
    Shape { asked, written: json!({ "type": "string", "pattern": "^[1-9][0-9]*$" }) }
}

/// A whole number of one digit.
pub fn digit() -> Shape {
    let whole = json!({ "type": "integer", "minimum": 0, "maximum": 9 });
    Shape { asked: json!({ "anyOf": [whole, { "type": "string", "pattern": "^[0-9]$" }] }), written: whole }
}

/// A whole number.
pub fn whole(least: i64) -> Shape {
    same(json!({ "type": "integer", "minimum": least }))
}

/// A derived number.
pub fn number() -> Shape {
    same(json!({ "type": "number" }))
}

pub fn flag() -> Shape {
    same(json!({ "type": "boolean" }))
}

pub fn text() -> Shape {
    same(json!({ "type": "string" }))
}

pub fn text_like(pattern: &str) -> Shape {
    same(json!({ "type": "string", "pattern": pattern }))
}

pub fn always(value: i64) -> Shape {
    same(json!({ "const": value }))
}

/// One of the core's own names.
pub fn choice(all: &[impl Display]) -> Shape {
    same(json!({ "type": "string", "enum": names(all) }))
}

pub fn names(all: &[impl Display]) -> Vec<String> {
    all.iter().map(ToString::to_string).collect()
}

/// A list, each item of one shape.
pub fn list(item: Shape) -> Shape {
    let of = |item: Value| json!({ "type": "array", "items": item });
    Shape { asked: of(item.asked), written: of(item.written) }
}

/// Exactly two items.
pub fn pair(item: Shape) -> Shape {
    same(json!({ "type": "array", "items": item.written, "minItems": 2, "maxItems": 2 }))
}

pub fn or_null(shape: Shape) -> Shape {
    let of = |shape: Value| json!({ "anyOf": [shape, { "type": "null" }] });
    Shape { asked: of(shape.asked), written: of(shape.written) }
}

/// A shape that is read otherwise than it is written.
pub fn read_and_written(asked: Value, written: Value) -> Shape {
    Shape { asked, written }
}

/// An object with these keys and no others.
pub fn object(keys: &[Key]) -> Shape {
    Shape { asked: asked(keys), written: written(keys) }
}

/// An object of which any key may be absent.
pub fn some_of(keys: &[String], value: Value) -> Shape {
    let properties: Map<String, Value> = keys.iter().map(|key| (key.clone(), value.clone())).collect();
    same(json!({ "type": "object", "additionalProperties": false, "properties": properties }))
}

/// The object as a job is asked: what is not required may be null or absent.
pub fn asked(keys: &[Key]) -> Value {
    closed(keys, |key| key.given == Given::Always, |key| (&key.shape.asked, key.given != Given::Always))
}

/// The object as it is written: every key is there.
pub fn written(keys: &[Key]) -> Value {
    closed(keys, |_| true, |key| (&key.shape.written, key.given == Given::OrNull))
}

/// `shape` is that of a key, and whether it may be null.
fn closed(keys: &[Key], is_required: fn(&Key) -> bool, shape: fn(&Key) -> (&Value, bool)) -> Value {
    let mut properties = Map::new();
    for key in keys {
        let (shape, or_null) = shape(key);
        let told = described(if or_null { nullable(shape) } else { shape.clone() }, key.description);
        assert!(properties.insert(key.name.into(), told).is_none(), "{} stands here twice", key.name);
    }
    let required: Vec<_> = keys.iter().filter(|key| is_required(key)).map(|key| key.name).collect();
    json!({ "type": "object", "additionalProperties": false, "required": required, "properties": properties })
}

fn described(mut shape: Value, description: &str) -> Value {
    shape["description"] = description.into();
    shape
}

/// The shape, or null: said in the type where that is all that holds a null back.
fn nullable(shape: &Value) -> Value {
    let mut shape = shape.clone();
    if let Some(choices) = shape.get_mut("enum").and_then(Value::as_array_mut) {
        choices.push(Value::Null);
    }
    if shape.get("anyOf").is_none() {
        match shape.get("type") {
            Some(Value::String(one)) => shape["type"] = json!([one, "null"]),
            Some(Value::Array(several)) => {
                let several = several.iter().cloned().chain([json!("null")]).collect();
                shape["type"] = Value::Array(several);
            }
            _ => shape = json!({ "anyOf": [shape, { "type": "null" }] }),
        }
    } else if let Some(several) = shape["anyOf"].as_array_mut() {
        several.push(json!({ "type": "null" }));
    }
    shape
}

/// How exact values are read and written.
pub fn definitions() -> Value {
    const FRACTION: &str = "[¼½¾⅛⅜⅝⅞]";
    const OVER: &str = "[0-9]+/0*[1-9][0-9]*";
    let magnitude = format!(
        "({FRACTION}|[0-9]+([ \\t]*|-){FRACTION}|[0-9]+([ \\t]+|-){OVER}|{OVER}|[0-9]+|[0-9]+\\.|[0-9]*[.,][0-9]{{1,9}}0*)"
    );
    let read = |sign: &str, about: &str| {
        json!({
            "description": format!("An exact number{about}: a JSON number of at most 9 decimals stands for its shortest \
                decimal text; a text is a decimal with point or comma, a fraction such as 127/70 or a mixed number \
                such as 1 1/4, without unit and exponent."),
            "type": ["number", "string"],
            "maxLength": 64,
            "pattern": format!("^[ \\t]*{sign}{magnitude}[ \\t]*$"),
        })
    };
    let mut zero_or_more = read("\\+?", ", 0 or more");
    zero_or_more["minimum"] = json!(0);
    let mut above_zero = read("\\+?", ", above 0");
    above_zero["exclusiveMinimum"] = json!(0);
    // Of a fraction the numerator, or the whole number before it, is not 0.
    above_zero["allOf"] = json!([{ "pattern": "^[^/]*[1-9¼½¾⅛⅜⅝⅞]" }]);
    json!({
        "asked": read("[-+]?", ""),
        "asked_zero_or_more": zero_or_more,
        "asked_above_zero": above_zero,
        "exact": {
            "description": "An exact number as it is written: a decimal, or a fraction where no decimal of 9 places has the value.",
            "type": "string",
            "pattern": "^-?(0|[1-9][0-9]*)(\\.[0-9]{0,8}[1-9]|/[1-9][0-9]*)?$",
        },
    })
}

/// A whole schema: its head, its definitions, and the object that it describes.
pub fn schema(id: &str, title: &str, description: &str, definitions: &[&str], object: Value) -> Value {
    let all = self::definitions();
    let defined: Map<String, Value> = definitions.iter().map(|name| ((*name).into(), all[*name].clone())).collect();
    let mut schema = object.as_object().expect("a schema is an object").clone();
    schema.insert("$schema".into(), "https://json-schema.org/draft/2020-12/schema".into());
    schema.insert("$id".into(), id.into());
    schema.insert("$defs".into(), defined.into());
    schema.insert("title".into(), title.into());
    schema.insert("description".into(), description.into());
    schema.into()
}
