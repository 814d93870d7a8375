/** Text that is told later, kept in a file of its own meanwhile: it may be more than memory holds. */
import { closeSync, createReadStream, mkdtempSync, openSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

export interface Spool {
  readonly write: (text: string | Uint8Array) => void;
  /** Hands everything written to `out`, in order. */
  readonly pour: (out: (bytes: Uint8Array) => Promise<void>) => Promise<void>;
  readonly remove: () => void;
}

export function openSpool(): Spool {
  const folder = mkdtempSync(join(tmpdir(), "wideberth-"));
  const path = join(folder, "later");
  const file = openSync(path, "w");
  return {
    write: (text) => {
      writeWhole(file, typeof text === "string" ? Buffer.from(text) : text);
    },
    pour: async (out) => {
      for await (const bytes of createReadStream(path) as AsyncIterable<Uint8Array>) {
        await out(bytes);
      }
    },
    remove: () => {
      closeSync(file);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** A disk may take less than it is given. */
function writeWhole(file: number, bytes: Uint8Array): void {
  for (let from = 0; from < bytes.length;) from += writeSync(file, bytes, from);
}
