/**
 * Writes the letters beyond Latin-1 in the built command line as escapes. There are some hundreds in
 * ten million, and with one of them every letter takes two bytes in memory, on every thread of a
 * register's check: 10 MB each. They stand in texts and comments only, where an escape says the same.
 */
import type { Plugin } from "vite";

export function oneByte(): Plugin {
  return {
    name: "one-byte",
    // Last of all: what prints the code anew would write the letters again.
    generateBundle(_, bundle) {
      for (const part of Object.values(bundle)) {
        if (part.type === "chunk") part.code = withEscapes(part.code);
      }
    },
  };
}

function withEscapes(code: string): string {
  return code.replace(
    /[^\u0000-\u00ff]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}
