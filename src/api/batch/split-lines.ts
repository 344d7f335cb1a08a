/**
 * Cuts a stream of bytes into lines without ever holding more than one line of the permitted
 * length. A longer line is counted, its bytes dropped as they come.
 */

const newline = 0x0a;
const carriageReturn = 0x0d;
const byteOrderMark = [0xef, 0xbb, 0xbf] as const;

export interface LineSink {
  /** A whole line without its end; the bytes are only valid during the call. */
  readonly line: (bytes: Uint8Array, number: number) => void;
  /** A line over the limit, told once, when its end is reached. */
  readonly overlong: (number: number) => void;
}

export class LineSplitter {
  readonly #limit: number;
  readonly #sink: LineSink;
  #held: Uint8Array[] = [];
  #heldBytes = 0;
  #number = 1;
  #dropping = false;

  constructor(limitBytes: number, sink: LineSink) {
    this.#limit = limitBytes;
    this.#sink = sink;
  }

  /** Takes the next bytes of the stream. */
  push(chunk: Uint8Array): void {
    let from = 0;
    for (let end = chunk.indexOf(newline); end !== -1; end = chunk.indexOf(newline, from)) {
      this.#keep(chunk.subarray(from, end));
      this.#finishLine();
      from = end + 1;
    }
    if (from < chunk.length) this.#keep(chunk.subarray(from));
  }

  /** Tells that the stream has ended; a last line without its end counts. */
  end(): void {
    if (this.#heldBytes > 0 || this.#dropping) this.#finishLine();
  }

  #keep(bytes: Uint8Array): void {
    if (this.#dropping) return;
    // Room for a byte order mark and a carriage return, neither of which counts as content.
    if (this.#heldBytes + bytes.length > this.#limit + byteOrderMark.length + 1) {
      this.#dropping = true;
      this.#held = [];
      this.#heldBytes = 0;
      return;
    }
    if (bytes.length > 0) this.#held.push(bytes);
    this.#heldBytes += bytes.length;
  }

  #finishLine(): void {
    const number = this.#number;
    this.#number += 1;
    const wasDropped = this.#dropping;
    const bytes = this.#content(number);
    this.#held = [];
    this.#heldBytes = 0;
    this.#dropping = false;
    if (wasDropped || bytes.length > this.#limit) this.#sink.overlong(number);
    else this.#sink.line(bytes, number);
  }

  #content(number: number): Uint8Array {
    const [only] = this.#held;
    let bytes = this.#held.length === 1 && only ? only : Buffer.concat(this.#held);
    if (number === 1 && byteOrderMark.every((byte, at) => bytes[at] === byte)) bytes = bytes.subarray(3);
    return bytes.at(-1) === carriageReturn ? bytes.subarray(0, -1) : bytes;
  }
}
