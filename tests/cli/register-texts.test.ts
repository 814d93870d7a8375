import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { inOrder } from "../../src/cli/register/in-order.ts";
import { type TextBatch, textBatches, textsOf } from "../../src/cli/register/json-texts.ts";

const FILE = "register.ndjson";
const text = (index: number) => JSON.stringify({ index, note: "ü".repeat(index % 700) });
const count = 3000;

async function batchesOf(bytes: Uint8Array, pieceBytes: number): Promise<readonly TextBatch[]> {
  async function* pieces(): AsyncGenerator<Uint8Array, void, void> {
    for (let at = 0; at < bytes.length; at += pieceBytes) yield bytes.subarray(at, at + pieceBytes);
  }
  const batches: TextBatch[] = [];
  for await (const batch of textBatches(pieces(), FILE)) batches.push(batch);
  return batches;
}

/** Batches as short texts: comparing long bytes one by one takes too long. */
function cutsOf(batches: readonly TextBatch[]): readonly string[] {
  return batches.map(
    ({ bytes, line }) => `${line} ${createHash("sha256").update(bytes).digest("hex")}`,
  );
}

test.each([
  ["a text a line", (index: number) => `${text(index)}\n`, 1],
  ["a text a line, with blank lines and a mark", (index: number) => `\r\n${text(index)}\r\n`, 2],
  ["a text sequence", (index: number) => `\u001E${text(index)}\n`, 1],
  ["a text sequence without line breaks", (index: number) => `\u001E${text(index)}`, 0],
])("%s: batches are cut at texts, wherever the pieces end", async (_, write, linesEach) => {
  const all = Array.from({ length: count }, (__, index) => write(index)).join("");
  const bytes = Buffer.from(linesEach === 2 ? `\uFEFF${all}` : all);
  const whole = await batchesOf(bytes, bytes.length);
  expect(whole.length).toBeGreaterThan(2);
  expect(cutsOf(await batchesOf(bytes, 65_536))).toEqual(cutsOf(whole));
  expect(cutsOf(await batchesOf(bytes, 999_983))).toEqual(cutsOf(whole));
  const texts = whole.flatMap((batch) => [...textsOf(batch, FILE)]);
  expect(texts.map((found) => found.text.trim())).toEqual(
    Array.from({ length: count }, (__, index) => text(index)),
  );
  const firstLine = linesEach === 2 ? 2 : 1;
  expect(texts.map(({ line }) => line)).toEqual(
    Array.from({ length: count }, (__, index) => firstLine + index * linesEach),
  );
});

test("answers come in the order of the questions, with so many begun at a time", async () => {
  let [begun, most] = [0, 0];
  const work = async (item: number) => {
    begun += 1;
    most = Math.max(most, begun);
    await new Promise((resolve) => {
      setTimeout(resolve, (item * 7) % 5);
    });
    begun -= 1;
    return item * 2;
  };
  const items = Array.from({ length: 20 }, (_, index) => index);
  const answers: number[] = [];
  for await (const answer of inOrder(items, work, 4)) answers.push(answer);
  expect(answers).toEqual(items.map((item) => item * 2));
  expect(most).toBe(4);
});

test("a fault ends the work where it stands in the order", async () => {
  const work = async (item: number) => {
    if (item === 3) throw new Error("no third");
    return item;
  };
  const answers: number[] = [];
  const run = async () => {
    for await (const answer of inOrder([0, 1, 2, 3, 4, 5], work, 3)) answers.push(answer);
  };
  await expect(run()).rejects.toThrow("no third");
  expect(answers).toEqual([0, 1, 2]);
});
