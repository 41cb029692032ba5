//! One macro for closed sets of choices, so that a choice has the same number in C and the same
//! name in JSON, Python and on the command line.

/// Two ASCII names are the same when they differ only in case or in `-` against `_`.
pub(crate) fn same_name(a: &[u8], b: &[u8]) -> bool {
    let fold = |byte: &u8| match byte {
        b'_' => b'-',
        other => other.to_ascii_lowercase(),
    };
    a.len() == b.len() && a.iter().map(fold).eq(b.iter().map(fold))
}

/// The known name that shares most with `prefix` and `name` behind it: front and back, in bytes.
pub(crate) fn nearest(prefix: &str, name: &str, known: impl Iterator<Item = &'static str>) -> &'static str {
    let same = |(a, b): &(u8, u8)| same_name(&[*a], &[*b]);
    let length = prefix.len().saturating_add(name.len());
    let shared = |known: &str| {
        let front = known.bytes().zip(prefix.bytes().chain(name.bytes())).take_while(same).count();
        let back = known.bytes().rev().zip(name.bytes().rev().chain(prefix.bytes().rev())).take_while(same).count();
        let shared = front.saturating_add(back).saturating_mul(2).saturating_sub(known.len().abs_diff(length));
        // Two letters in the wrong order: of two names as near, the one of the same letters.
        shared.saturating_mul(2).saturating_add(usize::from(same_letters(known, prefix, name)))
    };
    known.map(|known| (shared(known), known)).max_by_key(|(shared, _)| *shared).map_or("", |(shared, known)| {
        // What shares nothing with any name is better told without one.
        if shared == 0 { "" } else { known }
    })
}

/// Whether the letters of `known` are those of `prefix` and `name`, in whatever order.
fn same_letters(known: &str, prefix: &str, name: &str) -> bool {
    let count = |text: &str, letter: u8| {
        text.bytes().fold(0_usize, |sum, byte| sum.saturating_add(usize::from(byte == letter)))
    };
    known.len() == prefix.len().saturating_add(name.len())
        && known.bytes().all(|byte| count(known, byte) == count(prefix, byte).saturating_add(count(name, byte)))
}

macro_rules! named {
    ($(#[$meta:meta])* pub enum $name:ident { $($(#[doc = $doc:literal])+ $variant:ident = $number:literal $text:literal),+ $(,)? }) => {
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        #[repr(u8)]
        #[non_exhaustive]
        pub enum $name { $($(#[doc = $doc])+ $variant = $number),+ }

        impl $name {
            /// Every choice, in the order of its number.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];
            /// The names of all choices, for messages.
            pub const CHOICES: &'static str = concat!("one of:" $(, " ", $text)+);

            /// The stable name, the same in every language.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $text),+ }
            }

            /// What it means, in the words of these pages.
            #[must_use]
            pub const fn meaning(self) -> &'static str {
                match self { $(Self::$variant => const { concat!($($doc),+).trim_ascii_start() }),+ }
            }

            /// The stable number, the same in every language; 0 is never used.
            #[must_use]
            pub const fn number(self) -> i32 {
                match self { $(Self::$variant => $number),+ }
            }

            /// The choice with this number, if there is one.
            #[must_use]
            pub const fn from_number(number: i32) -> Option<Self> {
                match number { $($number => Some(Self::$variant),)+ _ => None }
            }

            /// The choice with this name; case and `-` against `_` do not matter.
            #[must_use]
            pub fn from_name(name: &[u8]) -> Option<Self> {
                Self::ALL.iter().copied().find(|choice| $crate::named::same_name(choice.name().as_bytes(), name))
            }
        }

        impl core::fmt::Display for $name {
            fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                f.write_str(self.name())
            }
        }

        #[cfg(feature = "serde")]
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_str(self.name())
            }
        }
    };
}
pub(crate) use named;
