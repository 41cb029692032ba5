// Runs the module that is named: its text goes to standard output, its result is the exit code.
import { readFileSync, writeSync } from "node:fs";

const [path] = process.argv.slice(2);
let memory;
const machine = {
    write(pointer, length) {
        let rest = new Uint8Array(memory.buffer, pointer >>> 0, length >>> 0);
        while (rest.length > 0) rest = rest.subarray(writeSync(1, rest));
    },
};
const { instance } = await WebAssembly.instantiate(readFileSync(path), { machine });
memory = instance.exports.memory;
process.exitCode = instance.exports.run();
