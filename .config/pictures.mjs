/**
 * `npm run pictures`: makes the pictures of the documents anew, from the program as it is: those of
 * paper with the command line, those of the screen in Chromium over the built site; and the printed
 * samples. With words only those whose names hold one of them: `npm run pictures -- print- walk`.
 * Look at each before it is kept.
 */
import { execFileSync } from "node:child_process";
import { copyFileSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { findProgram } from "./find-program.mjs";
import { installPackages } from "./installed-packages.mjs";
import { repository, tool } from "./repository.mjs";

/** Pages by what stands on them; a4 is 11.69 inches long, so 75 dots an inch make 877 of it. */
const PAPER = {
  "print-map": { of: "solve map", has: /./, dpi: 75 },
  "print-plot-list": { of: "solve map", has: /^Plot list/m, dpi: 65 },
  "print-bed-card": { of: "solve cards", has: /Bed B02/, dpi: 55 },
  "print-isolation": { of: "solve isolation", has: /Isolation report/, dpi: 65 },
  "print-set-out": { of: "solve set-out", has: /Set-out table/, dpi: 65 },
  "print-compare": { of: "compared", has: /./, dpi: 75 },
  "print-stakes": { of: "stakes", has: /./, dpi: 50 },
  "print-packets": { of: "packets", has: /./, dpi: 50 },
};

const SOLVE = "sample-plots/garden-to-solve.json";
const SOLVED = "sample-plots/garden-solved.json";
/** What the command line is asked for, but for where it goes. */
const PDFS = {
  "solve map": ["map", SOLVE],
  "solve cards": ["map", SOLVE, "--with", "bed-cards"],
  "solve isolation": ["map", SOLVE, "--with", "isolation"],
  "solve set-out": ["map", SOLVE, "--with", "set-out"],
  stakes: ["export", SOLVED, "--format", "stake-labels"],
  packets: ["export", SOLVED, "--format", "packet-labels"],
};

/** Printed samples of the sample plans, sample-plots/printed. */
const PRINTED = {
  "garden-to-solve-map": ["map", SOLVE, "-o"],
  "garden-solved-map": [
    "map",
    SOLVED,
    "--with",
    "bed-cards,calendar,harvest,isolation,set-out",
    "-o",
  ],
  "garden-solved-compared": ["compare", SOLVED, "--pdf"],
  "garden-solved-packets": ["export", SOLVED, "--format", "packet-labels", "-o"],
  "garden-solved-stakes": ["export", SOLVED, "--format", "stake-labels", "-o"],
  "two-acre-field-shelf-packets": [
    "export",
    "sample-plots/two-acre-field.json",
    "--format",
    "lot-labels",
    "-o",
  ],
  "two-acre-field-map": ["map", "sample-plots/two-acre-field.json", "--paper", "Letter", "-o"],
};

const words = process.argv.slice(2);
const isWanted = (name) => words.length === 0 || words.some((word) => name.includes(word));

if (!installPackages()) process.exit(1);
const folder = mkdtempSync(join(tmpdir(), "wideberth-pictures-"));
try {
  const paper = Object.keys(PAPER).filter(isWanted);
  const printed = Object.keys(PRINTED).filter(isWanted);
  if (paper.length + printed.length > 0) {
    build(["--ssr", "--outDir", join(folder, "cli")]);
    paperPictures(paper);
    for (const name of printed) {
      run([...PRINTED[name], `${repository}sample-plots/printed/${name}.pdf`]);
      console.log(`sample-plots/printed/${name}.pdf`);
    }
  }
  const { screenPictures } = await import("./screen-pictures.mjs");
  await screenPictures(folder, isWanted, keep);
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** The command line, whose words are not for here. */
function run(args) {
  return execFileSync(process.execPath, [join(folder, "cli/wideberth.mjs"), ...args], {
    cwd: repository,
    stdio: ["ignore", "ignore", "pipe"],
  });
}

function paperPictures(names) {
  const made = new Map();
  const pdfOf = (of) => {
    const file = made.get(of) ?? join(folder, `${of.replaceAll(" ", "-")}.pdf`);
    if (!made.has(of)) {
      if (of === "compared") run(["compare", SOLVED, "--pdf", file]);
      else run([...PDFS[of], "-o", file]);
    }
    made.set(of, file);
    return file;
  };
  for (const name of names) {
    const { of, has, dpi } = PAPER[name];
    const file = pdfOf(of);
    const pages = execFileSync(program("pdftotext"), ["-layout", file, "-"], {
      encoding: "utf8",
    }).split("\f");
    const page = pages.findIndex((text) => has.test(text)) + 1;
    if (page === 0) throw new Error(`${name}: no page of the ${of} has ${has}`);
    const place = join(folder, name);
    execFileSync(
      program("pdftoppm"),
      ["-png", "-singlefile", "-r", dpi, "-f", page, "-l", page, file, place].map(String),
    );
    keep(name, `${place}.png`);
  }
}

function build(options) {
  execFileSync(tool("vite"), ["build", ...options, "--logLevel", "error"], {
    cwd: repository,
    env: { ...process.env, NODE_ENV: "production" },
    stdio: ["ignore", "ignore", "inherit"],
  });
}

/** Takes a picture made into docs/pictures. */
function keep(name, file) {
  copyFileSync(file, `${repository}docs/pictures/${name}.png`);
  console.log(`docs/pictures/${name}.png`);
}

function program(name) {
  const found = findProgram(name);
  if (found === null) throw new Error(`${name} is missing: install Debian's package poppler-utils`);
  return found;
}
