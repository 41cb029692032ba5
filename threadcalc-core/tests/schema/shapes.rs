//! What a schema lists and what a text holds, as paths: `drill.alternatives[].drill` is an object in a list.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

/// The keys of every object by its path; the outermost has none.
pub type Objects = BTreeMap<String, BTreeSet<String>>;

fn under(path: &str, key: &str) -> String {
    if path.is_empty() { key.into() } else { format!("{path}.{key}") }
}

/// Every object of a text, with every key that it has anywhere.
pub fn seen(value: &Value, path: &str, objects: &mut Objects) {
    match value {
        Value::Object(members) => {
            objects.entry(path.into()).or_default().extend(members.keys().cloned());
            members.iter().for_each(|(key, value)| seen(value, &under(path, key), objects));
        }
        Value::Array(items) => items.iter().for_each(|item| seen(item, &format!("{path}[]"), objects)),
        _ => {}
    }
}

/// The paths of everything that is null in a text, and of everything that is not.
pub fn nulls(value: &Value, path: &str, none: &mut BTreeSet<String>, some: &mut BTreeSet<String>) {
    match value {
        Value::Null => none.insert(path.into()),
        _ => some.insert(path.into()),
    };
    match value {
        Value::Object(members) => members.iter().for_each(|(key, value)| nulls(value, &under(path, key), none, some)),
        Value::Array(items) => items.iter().for_each(|item| nulls(item, &format!("{path}[]"), none, some)),
        _ => {}
    }
}

/// Calls `each` with every shape of a schema and its path. References lead to plain numbers and texts only.
fn walk(shape: &Value, path: &str, each: &mut impl FnMut(&Value, &str)) {
    each(shape, path);
    for (key, inner) in shape["properties"].as_object().into_iter().flatten() {
        walk(inner, &under(path, key), each);
    }
    if let Some(items) = shape.get("items") {
        walk(items, &format!("{path}[]"), each);
    }
    for one in shape["anyOf"].as_array().into_iter().flatten() {
        walk(one, path, each);
    }
}

/// Every object that a schema lists.
pub fn listed(schema: &Value) -> Objects {
    let mut objects = Objects::new();
    walk(schema, "", &mut |shape, path| {
        if let Some(keys) = shape["properties"].as_object() {
            assert_eq!(shape["additionalProperties"], Value::Bool(false), "{path}: open to other keys");
            objects.entry(path.into()).or_default().extend(keys.keys().cloned());
            for (key, told) in keys {
                let is_told = told["description"].as_str().is_some_and(|told| told.ends_with('.'));
                assert!(is_told || path.ends_with(".numbers"), "{path}.{key} has no description");
            }
        }
    });
    objects
}

/// The paths that a schema lets be null.
pub fn nullable(schema: &Value, paths: &mut BTreeSet<String>) {
    walk(schema, "", &mut |shape, path| {
        let several = shape["type"].as_array().is_some_and(|types| types.iter().any(|name| name == "null"));
        if several || shape["type"] == "null" {
            paths.insert(path.into());
        }
    });
}

/// The choices of a schema by the key that takes them.
pub fn choices(schema: &Value, found: &mut Vec<(String, Vec<String>)>) {
    walk(schema, "", &mut |shape, path| {
        if let Some(names) = shape["enum"].as_array() {
            let names = names.iter().filter_map(Value::as_str).map(String::from).collect();
            found.push((path.trim_end_matches("[]").into(), names));
        }
    });
}
