/** The seed list as CSV, out and back: nothing lost, nothing run as a formula, every fault named. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { putVarieties } from "../../../src/core/edits/variety-list.ts";
import { MAX_CSV_LENGTH } from "../../../src/core/exchange/csv-list.ts";
import {
  type VarietyList,
  readVarietiesCsv,
} from "../../../src/core/exchange/read-varieties-csv.ts";
import { csvColumns, varietiesCsv } from "../../../src/core/exchange/varieties-csv.ts";
import { emptyPlan } from "../../../src/core/model/empty-plan.ts";
import { type Plan, type Variety, heatMethods } from "../../../src/core/model/plan.ts";
import { problemText } from "../../../src/core/model/problem.ts";

const book = cropBook();

function planWith(...varieties: readonly Variety[]): Plan {
  return { ...emptyPlan("list", 2027), varieties };
}

function read(text: string, plan: Plan = planWith()): VarietyList {
  const result = readVarietiesCsv(text, "list.csv", plan, book);
  if (!result.ok) throw new Error(result.problems.map(problemText).join(" "));
  return result.value;
}

function refusal(text: string): string {
  const result = readVarietiesCsv(text, "list.csv", planWith(), book);
  return result.ok ? "taken" : result.problems.map(problemText).join(" ");
}

/** The varieties of the accepted rows, without the ids made for them. */
function taken(list: VarietyList): readonly Partial<Variety>[] {
  return list.accepted.map(({ variety: { id: _id, ...rest } }) => rest);
}

const AMBER: Variety = {
  id: "variety-1",
  name: "Amber Lantern",
  kind: "tomato",
  form: "potato-leaf",
  wantedPlants: 10,
  isolationM: 7.62,
  figure: "us-certified",
  sownToFlower: [55, 65],
  note: 'says "keep", twice\nand a line',
};

describe("written", () => {
  test("headings, CRLF, quotes doubled, ranges no spreadsheet takes for a date", () => {
    const [headings, row] = varietiesCsv(planWith(AMBER), book).split("\r\n");
    expect(headings).toBe(csvColumns.join(","));
    expect(row).toBe(
      'Amber Lantern,tomato,Solanum lycopersicum,potato-leaf,no,10,7.62 m,us-certified,55 to 65,,,,,"says ""keep"", twice\nand a line"',
    );
  });

  test.each([
    ["=1+1", "'=1+1"],
    ["+cmd", "'+cmd"],
    ["-2", "'-2"],
    ["@SUM(A1)", "'@SUM(A1)"],
    ["\tx", "'\tx"],
    ["\rx", "'\rx"],
    ["  =1", "'  =1"],
    ["\uFF1D1", "'\uFF1D1"],
    ["'=1", "''=1"],
    ["'quoted'", "'quoted'"],
    ["1-2", "1-2"],
  ])("the name %j stands as %j", (name, cell) => {
    const text = varietiesCsv(planWith({ ...AMBER, name }), book);
    const row = text.slice(text.indexOf("\r\n") + 2);
    expect(row.replace(/^"|"(?=,tomato)/g, "").startsWith(`${cell},tomato`)).toBe(true);
  });
});

const word = fc
  .string({ maxLength: 20, unit: "grapheme" })
  .map((typed) => typed.normalize("NFC").trim());
const risky = fc
  .tuple(fc.constantFrom("=", "+", "-", "@", "'", "'=", '"', ";", ",", "x,\ny", "\uFF1D"), word)
  .map(([lead, rest]) => `${lead}${rest}`.trim());
const text = fc.oneof(word, risky);
const days = fc
  .tuple(fc.integer({ min: 1, max: 400 }), fc.nat(400))
  .map(([least, more]): [number, number] => [least, least + more]);
const hundredths = (max: number) => fc.nat(max * 100).map((value) => value / 100);
const variety = fc.record(
  {
    name: text.filter((name) => name !== ""),
    kind: fc.constantFrom("tomato", "beet", "maize", "pepper", "hot-pepper"),
    hybrid: fc.constant(true),
    wantedPlants: fc.nat(500),
    isolationM: hundredths(3000),
    sownToFlower: days,
    transplantedToFlower: days,
    bloomDays: days,
    heatToFlower: fc.record({
      method: fc.constantFrom(...heatMethods),
      baseC: fc.integer({ min: -10, max: 20 }),
      capC: fc.option(hundredths(40)),
      cDays: days,
    }),
    note: text.filter((note) => note !== ""),
  },
  { requiredKeys: ["name", "kind"] },
);
const varieties = fc
  .uniqueArray(variety, {
    maxLength: 8,
    selector: ({ name, kind }) => `${kind}|${name.normalize("NFC").toLowerCase()}`,
  })
  .map((list) => list.map((entry, index): Variety => ({ id: `variety-${index + 1}`, ...entry })));

describe("there and back", () => {
  test("an empty plan gets what was written", () => {
    fc.assert(
      fc.property(varieties, (list) => {
        const back = read(varietiesCsv(planWith(...list), book));
        expect(back.rejected).toEqual([]);
        expect(back.accepted.map((row) => row.variety)).toEqual(list);
      }),
      { numRuns: 300 },
    );
  });

  test("the plan itself stays as it is, every row the same", () => {
    fc.assert(
      fc.property(varieties, (list) => {
        const plan = planWith(...list);
        const back = read(`\uFEFF${varietiesCsv(plan, book)}`, plan);
        expect(back.rejected).toEqual([]);
        expect(back.accepted.map((row) => row.change)).toEqual(list.map(() => "same"));
      }),
      { numRuns: 100 },
    );
  });

  test("nonsense never throws", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (nonsense) => {
        readVarietiesCsv(nonsense, "list.csv", planWith(), book);
        readVarietiesCsv(`name,kind\r\n${nonsense}`, "list.csv", planWith(), book);
      }),
      { numRuns: 300 },
    );
  });
});

describe("read as spreadsheets write", () => {
  test("semicolons, decimal commas, other headings and columns of one's own", () => {
    const list = read(
      "\uFEFFVariety;Crop;Wanted;Isolation;Hybrid;Shoe size\r\nOld Ferry;Tomato;24,0;7,62 m;yes;44\r\n",
    );
    expect(taken(list)).toEqual([
      { name: "Old Ferry", kind: "tomato", wantedPlants: 24, isolationM: 7.62, hybrid: true },
    ]);
    expect(list.unknownColumns).toEqual(["Shoe size"]);
  });

  test("tabs, a line that names the delimiter, blank rows, lines without the last cells", () => {
    const list = read("sep=\t\r\nname\tkind\tnote\r\nOld Ferry\ttomato\r\n\t\t\r\nTarn\tbeet\tx");
    expect(list.accepted.map(({ row }) => row)).toEqual([3, 5]);
    expect(taken(list)).toEqual([
      { name: "Old Ferry", kind: "tomato" },
      { name: "Tarn", kind: "beet", note: "x" },
    ]);
  });

  test("kinds by common name, other name, id or botanical name", () => {
    const list = read(
      "name,kind,botanical name\nA,aubergine,\nB,,Beta vulgaris\nC,summer-squash,\n",
    );
    expect(taken(list).map(({ kind }) => kind)).toEqual(["eggplant", "beet", "summer-squash"]);
  });

  test("a bare length is in the plan's unit", () => {
    const feet: Plan = { ...planWith(), units: "ft" };
    expect(taken(read("name,kind,isolation\nA,tomato,10\n", feet))[0]?.isolationM).toBeCloseTo(
      3.048,
    );
  });
});

describe("rows of varieties already there", () => {
  const plan = planWith(AMBER, { id: "variety-7", name: "Tarn", kind: "beet" });

  test("change what they say, and only that; the case of a name does not count", () => {
    const list = read("name,kind,plants wanted,note\nAMBER lantern,tomato,12,\n", plan);
    expect(list.accepted).toEqual([
      {
        row: 2,
        change: "changed",
        variety: { ...AMBER, name: "AMBER lantern", wantedPlants: 12 },
        columns: ["name", "plants wanted"],
      },
    ]);
  });

  test("of another kind are another variety, with an id of its own", () => {
    const [row] = read("name,kind\nTarn,chard\n", plan).accepted;
    expect(row).toMatchObject({ change: "new", variety: { id: "variety-8", kind: "chard" } });
  });

  test("are taken in one step that leaves the others as they are", () => {
    const { accepted, newLots } = read("name,kind,lot\nTarn,beet,L1\nNew,pea,\n", plan);
    const edit = putVarieties(
      accepted.map((row) => row.variety),
      "Take 2 varieties",
      newLots,
    );
    const after = edit.apply(plan);
    expect(after.varieties.map(({ name, lots }) => [name, lots])).toEqual([
      ["Amber Lantern", undefined],
      ["Tarn", ["lot-1"]],
      ["New", undefined],
    ]);
    expect(after.lots).toEqual([
      { id: "lot-1", code: "L1", variety: after.varieties[1]?.id, state: "in stock" },
    ]);
    expect(after.varieties[0]).toBe(AMBER);
  });

  test("a lot of another variety is refused by its code, and none is made for the row", () => {
    const shelf = {
      ...plan,
      lots: [{ id: "lot-1", code: "AL-25", variety: AMBER.id, state: "in stock" as const }],
    };
    const { accepted, rejected, newLots } = read(
      "name,kind,lot\nTarn,beet,T-1; al-25\nNew,pea,N-1\nOther,pea,n-1\nAmber Lantern,tomato,AL-25; AL-26\n",
      shelf,
    );
    expect(
      rejected.map(({ row, problems }) => [row, problems[0]?.column, problems[0]?.expected]),
    ).toEqual([
      [2, "lot", 'no lot of another variety, as "AL-25" is'],
      [4, "lot", 'no lot of another variety, as "N-1" is'],
    ]);
    expect(accepted.map((row) => row.variety.name)).toEqual(["New", "Amber Lantern"]);
    expect(newLots.map((lot) => [lot.code, lot.variety])).toEqual([
      ["N-1", accepted[0]?.variety.id],
      ["AL-26", AMBER.id],
    ]);
  });
});

describe("rejected rows say what they got and what was expected", () => {
  test.each([
    ["A,moonfruit", "kind", '"moonfruit"', /a kind known here/],
    [",tomato", "name", '""', /variety's name/],
    ["A,tomato,a dozen", "plants wanted", '"a dozen"', /whole number/],
    ["A,tomato,-4", "plants wanted", '"-4"', /whole number/],
    ["A,tomato,,far", "isolation distance", '"far"', /a length/],
    ["A,tomato,,,heart-shaped", "flower form", '"heart-shaped"', /one of regular, potato-leaf/],
    ["A,beet,,,regular", "flower form", '"regular"', /no flower forms/],
    ["A,tomato,,,,us-guess", "figure", '"us-guess"', /us-certified/],
    ["A,tomato,,,,,perhaps", "hybrid", '"perhaps"', /yes or no/],
    ["A,tomato,,,,,,65 to 55", "days sown to flower", '"65 to 55"', /55 to 65/],
    ["A,tomato,,,,,,,0", "days in flower", '"0"', /days/],
    ["A,tomato,,,,,,,,warm", "heat to flower", '"warm"', /C-days/],
    [
      "A,tomato,,,,,,,,,,extra",
      "",
      '12 cells, "extra" beyond the last heading',
      /at most 10 cells/,
    ],
    ['A,tomato,,"1"2', "", "a stray double quote", /double quotes|double quote/],
  ])("%j", (row, column, got, expected) => {
    const headings =
      "name,kind,plants wanted,isolation distance,flower form,figure,hybrid,days sown to flower,days in flower,heat to flower";
    const { accepted, rejected } = read(`${headings}\nB,beet\n${row}\n`);
    expect(accepted.map(({ variety: { name } }) => name)).toEqual(["B"]);
    expect(rejected).toHaveLength(1);
    expect(rejected[0]?.row).toBe(3);
    expect(rejected[0]?.problems[0]).toMatchObject({ column, got });
    expect(rejected[0]?.problems[0]?.expected).toMatch(expected);
  });

  test("an unknown kind, whose cells cannot be read, and a variety named twice", () => {
    const { rejected } = read("name,kind,plants wanted\nA,nothing,x\nB,beet,1\nb,beet,2\n");
    expect(
      rejected.map(({ row, problems }) => [row, problems.map((fault) => fault.column)]),
    ).toEqual([
      [2, ["kind"]],
      [4, ["name"]],
    ]);
    expect(rejected[1]?.problems[0]?.expected).toBe("each variety once (row 3 has it already)");
  });

  test("a name too long", () => {
    const { rejected } = read(`name,kind\n${"x".repeat(201)},beet\n`);
    expect(rejected[0]?.problems[0]?.expected).toBe("at most 200 characters");
  });
});

describe("whole files refused", () => {
  test.each([
    ["", /an empty file/],
    ["just some words", /headings in the first row/],
    ["name,plants\nA,1\n", /"name" and "kind"/],
    ["name,kind,name\n", /"name" more than once/],
    ["x".repeat(MAX_CSV_LENGTH + 1), /at most 4000000 characters/],
    [`name,kind\n${"A,beet\n".repeat(20_002)}`, /at most 20000 rows/],
  ])("%#", (file, reason) => {
    expect(refusal(file)).toMatch(reason);
  });
});

describe("a list without headings, as people type one", () => {
  test("kind, name and plants are told by what stands in them, in any order", () => {
    const wanted = { name: "Heron Red", kind: "tomato", wantedPlants: 8 };
    expect(taken(read("Heron Red, tomato, 8\nWeir Gold, tomatoes, 6"))).toEqual([
      wanted,
      { name: "Weir Gold", kind: "tomato", wantedPlants: 6 },
    ]);
    expect(taken(read("tomato\tHeron Red\t8"))).toEqual([wanted]);
    expect(taken(read("8;Heron Red;Solanum lycopersicum"))).toEqual([wanted]);
    expect(taken(read("Heron Red, tomato"))).toEqual([{ name: "Heron Red", kind: "tomato" }]);
  });

  test("rows are counted from the first, and one whose kind is not known is told", () => {
    const list = read("Heron Red, tomato\nWeir Gold, tomatillo\nOtter Plum, plumcot");
    expect(list.accepted.map(({ row }) => row)).toEqual([1, 2]);
    expect(list.rejected).toMatchObject([{ row: 3, problems: [{ column: "kind" }] }]);
  });

  test("squash alone is four species: it is asked which, and never taken for one of them", () => {
    const [row] = read("name,kind\nRake Moon,squash").rejected;
    expect(row?.problems[0]?.expected).toMatch(
      /which of them: .*Cucurbita pepo.*Cucurbita maxima.*Cucurbita moschata/,
    );
  });

  test("a name that species share is told apart by the botanical name beside it", () => {
    const list = read(
      "name,kind,botanical name\nRake Moon,pumpkin,Cucurbita maxima\nWeir Moon,pumpkin,\nTarn Moon,pumpkin,Zea mays",
    );
    expect(list.accepted.map((row) => row.variety.kind)).toEqual(["winter-squash"]);
    expect(list.rejected.map(({ row }) => row)).toEqual([3, 4]);
    expect(list.rejected[0]?.problems[0]?.expected).toMatch(/which of them: pepo pumpkin/);
  });

  test("a column of shared names is one of kinds", () => {
    const list = read("Rake Moon, pumpkin\nWeir Moon, squash\nTarn Moon, butternut");
    expect(list.accepted.map((row) => row.variety.kind)).toEqual(["butternut"]);
    expect(list.rejected.map(({ problems }) => problems[0]?.column)).toEqual(["kind", "kind"]);
  });
});
