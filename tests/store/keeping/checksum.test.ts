/** Damaged copies are recognised: one flipped letter is enough. */
import { afterEach, expect, test, vi } from "vitest";
import { checksum, isWhole } from "../../../src/store/keeping/checksum.ts";

afterEach(() => vi.unstubAllGlobals());

const TEXT = '{ "title": "Fallow End, zweiter Versuch – 種" }';

test("the sum of a text is the published SHA-256", async () => {
  // FIPS 180-2, appendix B.1.
  expect(await checksum("abc")).toBe(
    "sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
  );
});

test("without SHA-256 the sum is the published 32-bit FNV-1a", async () => {
  vi.stubGlobal("crypto", {});
  // Test vector of the authors for "foobar".
  expect(await checksum("foobar")).toBe("fnv1a:bf9cf968");
});

test.each(["with SHA-256", "without"])("one changed letter anywhere is found, %s", async (how) => {
  if (how === "without") vi.stubGlobal("crypto", {});
  const sum = await checksum(TEXT);
  expect(await isWhole(TEXT, sum)).toBe(true);
  for (let index = 0; index < TEXT.length; index += 1) {
    const flipped = String.fromCharCode(TEXT.charCodeAt(index) ^ 1);
    const damaged = TEXT.slice(0, index) + flipped + TEXT.slice(index + 1);
    expect(await isWhole(damaged, sum)).toBe(false);
  }
});

test("a sum made without SHA-256 can be verified where there is one", async () => {
  vi.stubGlobal("crypto", {});
  const sum = await checksum(TEXT);
  vi.unstubAllGlobals();
  expect(await isWhole(TEXT, sum)).toBe(true);
  expect(await isWhole(`${TEXT} `, sum)).toBe(false);
});
