/** docs/reliability.md: every case is there, and every test it names exists. */
import { existsSync } from "node:fs";
import { expect, test } from "vitest";
import { repository } from "../../.config/repository.mjs";
import { KEEPING_RULE } from "../../src/store/keeping/keeping-rule.ts";
import { textOf } from "./source-files.ts";

const CASES = 86;
const [, ...sections] = textOf("docs/reliability.md").split(/^### (?=F\d\d )/m);
const cases = sections.map((text) => ({ id: text.slice(0, 3), text }));

test("holds each case from F01 on once, in order", () => {
  const ids = Array.from({ length: CASES }, (_, index) => `F${String(index + 1).padStart(2, "0")}`);
  expect(cases.map(({ id }) => id)).toEqual(ids);
});

test("every case names a test, or says why none is run here", () => {
  const silent = cases.filter(
    ({ text }) => !/^- `tests\/\S+\.test\.ts`: \S/m.test(text) && !/^Not run here: \S/m.test(text),
  );
  expect(silent.map(({ id }) => id)).toEqual([]);
});

test("every test that is named exists", () => {
  const missing = cases.flatMap(({ id, text }) =>
    [...text.matchAll(/^- `(tests\/\S+)`: (.+)$/gm)]
      .filter(([, file = "", name = ""]) => {
        if (!existsSync(`${repository}${file}`)) return true;
        return !textOf(file).includes(JSON.stringify(name));
      })
      .map(([line]) => `${id} ${line}`),
  );
  expect(missing).toEqual([]);
});

test("states the keeping rule with the numbers of the code", () => {
  const { newest, days, openings } = KEEPING_RULE;
  const page = textOf("docs/reliability.md");
  expect(page).toContain(`the newest ${newest};`);
  expect(page).toContain(`the ${days} latest days`);
  expect(page).toContain(`the ${openings} latest openings`);
});
