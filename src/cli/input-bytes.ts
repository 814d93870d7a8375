/** A file or stdin as a stream of bytes of which the first can be looked at before the rest is read. */
import { createReadStream } from "node:fs";
import { fileTrouble } from "./file-trouble.ts";
import { Refusal } from "./refusal.ts";

/** So much is looked at for the end of the first line. */
const START_BYTES = 1_000_000;

export interface InputBytes {
  /** As messages name it. */
  readonly file: string;
  /** The first line at least, or the whole when there is less. */
  readonly start: Uint8Array;
  /** Everything, the start included; to be read once. */
  readonly all: AsyncIterable<Uint8Array>;
}

/** @param path `-` for stdin */
export async function openBytes(path: string): Promise<InputBytes> {
  const isStdin = path === "-";
  const stream: AsyncIterable<Uint8Array> = isStdin ? process.stdin : createReadStream(path);
  const chunks = stream[Symbol.asyncIterator]();
  const next = async () => {
    try {
      return await chunks.next();
    } catch (error) {
      throw new Refusal([`${path}: ${fileTrouble(error)}.`]);
    }
  };
  const first: Uint8Array[] = [];
  let size = 0;
  while (size < START_BYTES) {
    const { done, value } = await next();
    if (done === true) break;
    first.push(value);
    size += value.length;
    if (value.includes(0x0a)) break;
  }
  async function* all(): AsyncGenerator<Uint8Array, void, void> {
    yield* first;
    for (let read = await next(); read.done !== true; read = await next()) yield read.value;
  }
  return { file: isStdin ? "stdin" : path, start: Buffer.concat(first), all: all() };
}
