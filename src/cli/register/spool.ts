/** Text that is told later, kept in a file of its own meanwhile: it may be more than memory holds. */
import { closeSync, createReadStream, mkdtempSync, openSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

export interface Spool {
  readonly write: (text: string) => void;
  /** Hands everything written to `out`, in order. */
  readonly pour: (out: (text: string) => Promise<void>) => Promise<void>;
  readonly remove: () => void;
}

export function openSpool(): Spool {
  const folder = mkdtempSync(join(tmpdir(), "wideberth-"));
  const path = join(folder, "later");
  const file = openSync(path, "w");
  return {
    write: (text) => {
      writeSync(file, text);
    },
    pour: async (out) => {
      for await (const text of createReadStream(path, "utf8") as AsyncIterable<string>) {
        await out(text);
      }
    },
    remove: () => {
      closeSync(file);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
