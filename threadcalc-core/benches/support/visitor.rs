//! The same counts by the visitor of the crate `gcode`.

use gcode::core::{
    BlockVisitor, CommandVisitor, ControlFlow, Diagnostics, HasDiagnostics, Noop, Number, ProgramVisitor, Span, Value,
};

use crate::Counts;

#[derive(Default)]
struct Counter {
    counts: Counts,
    diagnostics: Noop,
}

impl Counter {
    fn code(&mut self, number: Number) {
        self.counts.words += 1;
        self.counts.sum += f64::from(number.major());
    }

    fn value(&mut self, value: &Value<'_>) {
        self.counts.words += 1;
        if let Value::Literal(value) = value {
            self.counts.sum += f64::from(*value);
        }
    }
}

struct Block<'a>(&'a mut Counter);
struct Command<'a>(&'a mut Counter);

impl HasDiagnostics for Counter {
    fn diagnostics(&mut self) -> &mut dyn Diagnostics {
        &mut self.diagnostics
    }
}

impl HasDiagnostics for Block<'_> {
    fn diagnostics(&mut self) -> &mut dyn Diagnostics {
        &mut self.0.diagnostics
    }
}

impl HasDiagnostics for Command<'_> {
    fn diagnostics(&mut self) -> &mut dyn Diagnostics {
        &mut self.0.diagnostics
    }
}

impl ProgramVisitor for Counter {
    fn start_block(&mut self) -> ControlFlow<impl BlockVisitor + '_> {
        ControlFlow::Continue(Block(self))
    }
}

impl BlockVisitor for Block<'_> {
    fn line_number(&mut self, _: u32, _: Span) {
        self.0.counts.numbered += 1;
    }

    fn comment(&mut self, _: &str, _: Span) {
        self.0.counts.comments += 1;
    }

    fn word_address(&mut self, _: char, value: Value<'_>, _: Span) {
        self.0.value(&value);
    }

    fn start_general_code(&mut self, number: Number) -> ControlFlow<impl CommandVisitor + '_> {
        self.0.code(number);
        ControlFlow::Continue(Command(self.0))
    }

    fn start_miscellaneous_code(&mut self, number: Number) -> ControlFlow<impl CommandVisitor + '_> {
        self.0.code(number);
        ControlFlow::Continue(Command(self.0))
    }

    fn start_tool_change_code(&mut self, number: Number) -> ControlFlow<impl CommandVisitor + '_> {
        self.0.code(number);
        ControlFlow::Continue(Command(self.0))
    }
}

impl CommandVisitor for Command<'_> {
    fn argument(&mut self, _: char, value: Value<'_>, _: Span) {
        self.0.value(&value);
    }
}

pub fn counts(text: &str) -> Counts {
    let mut counter = Counter::default();
    gcode::core::parse(text, &mut counter);
    counter.counts
}
