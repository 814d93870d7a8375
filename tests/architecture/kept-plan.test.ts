/** What is written into a file comes from the kept plan, never from what is only being tried. */
import { expect, test } from "vitest";
import { filesUnder, textOf } from "./source-files.ts";

const makers = filesUnder("src/panel").filter((path) =>
  /\b(downloadBytes|makeFile|askPaper|savePrint|makeCompare|downloadMade)\(/.test(textOf(path)),
);

test("no part of the panel that makes a file reads the plan on screen", () => {
  expect(makers.length).toBeGreaterThan(5);
  const reading = makers.filter((path) =>
    /use-shown-plan\.ts"|useFollowed\b|\{ shown|\.shown\b/.test(textOf(path)),
  );
  expect(reading).toEqual([]);
});
