//! Any bytes as the comment of a program: the threads found lie within it, one behind the other.
#![no_main]

use libfuzzer_sys::fuzz_target;
use threadcalc_core::read_comment;
use threadcalc_fuzz::check;

fuzz_target!(|text: &[u8]| {
    let [plain, for_tap] = [false, true].map(|tool_is_tap| read_comment(text, tool_is_tap));
    for comment in [&plain, &for_tap] {
        let mut end = 0;
        for found in comment.threads() {
            assert!(found.at >= end && found.length > 0, "found at {} behind {end}", found.at);
            end = found.at + found.length;
            assert!(end <= text.len(), "{end} of {} bytes", text.len());
            check::thread(&found.thread);
        }
        assert!(!comment.more() || comment.threads().count() > 0, "more than none");
    }
    // A tool that is a tap makes more of a comment, never nothing of something.
    assert!(plain.threads().count() == 0 || for_tap.threads().count() > 0, "{plain:?} is lost");
});
