import { describe, expect, test } from "vitest";
import { afterKey, afterPress, afterRange } from "../../../src/panel/shelf/list-keys.ts";

const ids = Array.from({ length: 30 }, (_, at) => `l${at}`);
const key = (name: string, more: { isShift?: boolean; isCommand?: boolean } = {}) => ({
  key: name,
  isShift: false,
  isCommand: false,
  ...more,
});

describe("keys in the list of lots", () => {
  test("an arrow goes on and picks that one alone", () => {
    const start = { picked: ["l3", "l9"], active: "l3" };
    expect(afterKey(ids, start, key("ArrowDown"))).toEqual({ picked: ["l4"], active: "l4" });
    expect(afterKey(ids, { picked: [], active: null }, key("ArrowDown"))?.active).toBe("l0");
    expect(afterKey(ids, { picked: [], active: "l0" }, key("ArrowUp"))?.active).toBe("l0");
  });

  test("with Shift all on the way are picked, with Ctrl it only goes", () => {
    const start = { picked: ["l1"], active: "l1" };
    expect(afterKey(ids, start, key("PageDown", { isShift: true }))?.picked).toEqual(
      ids.slice(1, 12),
    );
    const gone = afterKey(ids, start, key("End", { isCommand: true }));
    expect(gone).toEqual({ picked: ["l1"], active: "l29" });
  });

  test("Space picks and drops, Ctrl+A picks all", () => {
    const picked = afterKey(ids, { picked: ["l1"], active: "l2" }, key(" "));
    expect(picked?.picked).toEqual(["l1", "l2"]);
    expect(afterKey(ids, { picked: ["l1", "l2"], active: "l2" }, key(" "))?.picked).toEqual(["l1"]);
    expect(
      afterKey(ids, { picked: [], active: null }, key("a", { isCommand: true }))?.picked,
    ).toEqual(ids);
  });

  test("letters and keys of an empty list are not for it", () => {
    expect(afterKey(ids, { picked: [], active: null }, key("a"))).toBeNull();
    expect(afterKey([], { picked: [], active: null }, key("ArrowDown"))).toBeNull();
  });

  test("a press with Ctrl adds one, with Shift all up to it, in either direction", () => {
    expect(afterPress({ picked: ["l1"], active: "l1" }, "l5").picked).toEqual(["l1", "l5"]);
    expect(afterRange(ids, { picked: ["l5"], active: "l5" }, "l3").picked).toEqual([
      "l5",
      "l3",
      "l4",
    ]);
    expect(afterRange(ids, { picked: ["l5"], active: "gone" }, "l3").picked).toEqual(["l3"]);
  });
});
