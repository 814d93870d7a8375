import { expect, test } from "vitest";
import { diagnosticsText, entryTime } from "../../../src/panel/keeping/diagnostics-words.ts";

const at = new Date(2026, 10, 26, 9, 5).toISOString();

test("the log says when in words and what happened before what the machine said", () => {
  expect(entryTime(at)).toBe("26 Nov 2026, 09:05");
  const text = diagnosticsText([
    { at, topic: "saving", text: "Not saved: the disk is full" },
    { at, topic: "program", text: "TypeError: x is undefined" },
  ]);
  expect(text).toBe(
    "26 Nov 2026, 09:05. Not saved: the disk is full\n" +
      "26 Nov 2026, 09:05. A part of the program failed. The plan is kept; reload the page if it goes on. Details: TypeError: x is undefined\n",
  );
});

test("an entry whose time is none is still shown", () => {
  expect(diagnosticsText([{ at: "old", topic: "notice", text: "Something" }])).toBe(
    "old. Something\n",
  );
});
