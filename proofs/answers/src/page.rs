//! Text on its way out of a machine, some thousand bytes at a time.

use core::fmt;

/// Holds text until there is a page of it, then hands it to `send`, which says whether it went out.
pub struct Page<F: FnMut(&[u8]) -> bool> {
    bytes: [u8; 4096],
    used: usize,
    whole: bool,
    send: F,
}

impl<F: FnMut(&[u8]) -> bool> Page<F> {
    /// An empty page.
    pub const fn new(send: F) -> Self {
        Self { bytes: [0; 4096], used: 0, whole: true, send }
    }

    /// Sends the rest; true if everything went out.
    #[must_use]
    pub fn end(mut self) -> bool {
        self.send();
        self.whole
    }

    fn send(&mut self) {
        let held = self.bytes.get(..self.used).unwrap_or(&[]);
        self.whole &= (self.send)(held);
        self.used = 0;
    }
}

impl<F: FnMut(&[u8]) -> bool> fmt::Write for Page<F> {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        for byte in text.bytes() {
            if self.used == self.bytes.len() {
                self.send();
            }
            if let Some(place) = self.bytes.get_mut(self.used) {
                *place = byte;
                self.used += 1;
            }
        }
        Ok(())
    }
}
