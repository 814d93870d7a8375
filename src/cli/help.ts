import { MEASURES_EXAMPLE } from "../core/labels/label-measures.ts";
import { labelSizes } from "../core/labels/label-sizes.ts";
import { printTitles } from "../core/files/print-words.ts";
import { companionIds } from "../core/map/companion-ids.ts";
import { exportList } from "../core/files/export-list.ts";
import { printParts } from "../core/files/print-list.ts";

const formats = exportList
  .map(({ id, title, needs }) => {
    const where = needs === "canvas" ? "; in the browser only" : "";
    return `      ${id.padEnd(13)} ${title}${where}`;
  })
  .join("\n");

const sheets = companionIds
  .map((id) => [id, printTitles[id]] as const)
  .map(([id, title], index) => {
    return `    ${(index === 0 ? "--with" : "").padEnd(7)}${id.padEnd(12)} ${title}`;
  })
  .join("\n");

const parts = printParts.map(({ id, title }) => `      ${id.padEnd(13)} ${title}`).join("\n");

const sizes = labelSizes
  .map(({ id }) => id)
  .join(", ")
  .replace(/(.{40,60}?), /g, "$1,\n                   ");

export const help = `Wideberth: how far apart seed plots must stand, and a map to plant them by.

wideberth serve [--port N] [--only-here]
    Serves the editor to the browsers of this computer and of the home network, until Ctrl+C.
    --port N       this port; without it the first free one from 8080 on
    --only-here    not to the network

wideberth check FILE [--json] [--all] [--ways] [--estimate] [--years] [--layout NAME]
    Checks a plan file or a GeoJSON FeatureCollection of plantings and prints the findings.
    A register of up to two million plantings is GeoJSON with one Feature a line.
    --json         one object for programs: pairs and findings
    --all          also the pairs that distance keeps apart
    --ways         also the ways out of each conflict, tried, the best first
    --estimate     also how much of the seed would be crossed, and what trials found
    --years        pairs that heat and time decide, in every year of the site's record of days
    --layout NAME  this layout instead of the chosen or first one
    --threads N    for a register; as many as the machine has, at most 8, without it

wideberth check PLAN --as-grown [--on YYYY-MM-DD] [--json] [--all] [--layout NAME]
    Judges the plan as the field record has it on a day (today if none is given), what the
    field changed first.

wideberth merge PLAN COPY -o FILE [--take ID ...]
    Brings two copies of one plan together: every entry of both records, and the changes to the
    plan itself listed one by one.
    --take ID      takes this change from COPY; without it PLAN's own stays

wideberth next PLAN -o FILE [--layout NAME] [--on YYYY-MM-DD]
    Starts the plan of the season after: plots become earlier crops of their ground, what stands
    over winter stays, roots in store and seed to renew head the seed list. PLAN stays as it is.
    --layout NAME  the layout that was grown; without it the one the field record is of
    --on DAY       entries of the field record until then count; today without it

wideberth clear PLAN -o FILE [--cages N] [--days N] [--stay CODE ...] [--grow NAME ...]
                [--prove SECONDS] [--layout NAME]
    Finds the fewest and mildest changes that clear all conflicts of a layout together, and
    writes the plan with them made. Each is told, with what is left.
    --cages N      new cages at most; without it as many as it takes
    --days N       days a start may move; 42 without it
    --stay CODE    this planting stays as it is
    --grow NAME    this variety is grown for seed this year whatever it costs
    --prove SECONDS  a solver may take so long to find better and to prove it

wideberth compare PLAN [--json | --csv | --pdf FILE] [--layout NAME --layout NAME ...]
                  [--paper NAME] [--overlaid]
    Measures the layouts of a plan side by side and lists what differs from the first.
    --layout NAME  only these layouts, in this order
    --pdf FILE     drawings at one ratio, measures and differences, to print
    --overlaid     with --pdf: the first layout drawn under each of the others

wideberth lay-out PLAN -o FILE [--layout NAME]
    Lays what the seed list still wants on the beds of a layout, in rows at its spacing and
    started at a sensible date, in three new layouts: all grown this year, fewest covers,
    roomiest distances. Says what each costs and what did not fit. PLAN stays as it is.
    --layout NAME  the layout with the beds; without it the chosen or first one

wideberth lots PLAN [--json | --csv]
    Prints the seed shelf: each lot with the band of its germination today, and
    which varieties to renew, most urgent first.
    --json         one object for programs
    --csv          one row for each lot

wideberth years PLAN [--seasons N] [--anew | --prove SECONDS] [--json | --csv]
                [-o FILE] [--layout NAME]
    Prints which variety is grown for seed in which season, and what stands against it:
    as kept in the plan, or laid out by a search where the plan has none.
    --seasons N    2 to 6 of them, the plan's own first
    --anew         laid out anew; what was set by hand stays
    --prove SECONDS  laid out anew by a solver that may take so long, and what it has proven
    -o FILE        also the plan with these years kept in it; PLAN stays as it is

wideberth map PLAN -o FILE [--paper A4] [--ratio 100] [--landscape | --portrait]
              [--with SHEETS] [--cards 2] [--layout NAME] [--as-grown [--on YYYY-MM-DD]]
    Writes the plot map as a PDF: map sheets at a true ratio, notes, plot list.
    --paper NAME   A4, Letter, A3, A5, Legal or Tabloid
    --ratio N      1:N exactly, on as many sheets as it takes; without it a
                   standard ratio at which the plots' codes can be read
${sheets}

wideberth print PLAN -o DIR [--only PARTS | --with PARTS] [--paper NAME] [--ratio N]
                [--portrait] [--stake-size NAME] [--packet-size NAME] [--offset XxY] [--qr]
                [--layout NAME] [--as-grown [--on YYYY-MM-DD]] [--force]
    Writes all paper of a season into a folder, one PDF for each thing, and names each:
    the map, cards, calendar, isolation report, sowing list, stakes, packets where
    there are lots. What is in the folder is not written over without --force.
    --only PARTS   these alone, --with PARTS these besides:
${parts}
    --many-sheets  a map of more than 200 sheets all the same; with map too
    --font FILE    a face (TTF, OTF) for letters the program's has not; with map and
                   export too

wideberth export PLAN --format NAME -o FILE [--layout NAME]
                 [--size NAME] [--start N] [--offset XxY] [--qr] [--treated TEXT]
                 [--as-grown [--on YYYY-MM-DD]]
    Writes one of the files for others:
${formats}
    --size NAME    of labels: ${sizes}
                   or measured, in mm:
                   "${MEASURES_EXAMPLE}"
    --start N      the first label of the sheet that is still there
    --offset XxY   how far the printer prints too far right and down, mm
    --qr           with a code read by machine
    --treated TEXT what the seed in the packets was treated with
    --as-grown     maps, pictures, pairs and packets as the field record has it on a day

wideberth --help
wideberth --version

FILE and PLAN may be - for stdin, and -o - is stdout.
Exit codes: 0 no conflict (map, export: written), 1 conflicts (years: faults), 2 bad input or usage, said on stderr.
`;
