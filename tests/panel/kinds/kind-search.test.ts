import { expect, test } from "vitest";
import { findKinds, formSearched } from "../../../src/panel/kinds/kind-search.ts";
import { book } from "../../support/small-plan.ts";

const found = (text: string) => findKinds(book.kinds, text).map((kind) => kind.id);

test("kinds are found by common and botanical name, in any case, exact ones first", () => {
  expect(found("Tomato")[0]).toBe("tomato");
  expect(found("solanum lycop")).toContain("tomato");
  expect(found("carrot")[0]).toBe("carrot");
  expect(found("carrot")).toContain("wild-carrot");
});

test("accents make no difference", () => {
  expect(found("tomáto")[0]).toBe("tomato");
});

test("what is said of many, or word by word, is found as well", () => {
  expect(found("carrots")[0]).toBe("carrot");
  expect(found("Courgettes")[0]).toBe("summer-squash");
  expect(found("tomatoes")[0]).toBe("tomato");
  expect(found("radishes")[0]).toBe("radish");
  expect(found("flint maize")).toContain("maize");
  expect(found("sweet peppers")[0]).toBe("pepper");
  expect(found("moonfruits")).toEqual([]);
});

test("a text that is nobody's name finds nothing, and so does no text", () => {
  expect(found("moonfruit")).toEqual([]);
  expect(found("  ")).toEqual([]);
});

test("a flower form finds its kind and is handed along; a name of the kind itself is not a form", () => {
  const tomato = findKinds(book.kinds, "potato leaf").find(({ id }) => id === "tomato");
  expect(tomato && formSearched(tomato, "potato leaf")?.id).toBe("potato-leaf");
  expect(tomato && formSearched(tomato, "Potato-leaf tomato")?.id).toBe("potato-leaf");
  expect(tomato && formSearched(tomato, "tomato")).toBeNull();
  expect(tomato && formSearched(tomato, "")).toBeNull();
});

test("a name that species share finds all of them", () => {
  expect(new Set(found("pumpkin").slice(0, 4))).toEqual(
    new Set(["pumpkin", "winter-squash", "butternut", "cushaw"]),
  );
  expect(found("scallions")).toEqual(["bunching-onion", "onion"]);
});
