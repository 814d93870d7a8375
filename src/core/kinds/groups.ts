/**
 * Which kinds pollinate each other. A group holds the species that can cross; its rows say how
 * readily. A row of a species with itself names who says that all its kinds cross.
 */
import type { CrossingGroup, SpeciesRelation } from "./crop.ts";

type Pair = SpeciesRelation;

function pair(
  one: string,
  other: string,
  relation: Pair["relation"],
  source: string,
  note?: string,
  ...otherwise: readonly string[]
): Pair {
  return {
    between: [one, other],
    relation,
    source,
    ...(note !== undefined && { note }),
    ...(otherwise.length > 0 && { otherwise }),
  };
}

/** What a seed parent of the first species takes from the second; the other way has its own row. */
function oneWay(...row: Parameters<typeof pair>): Pair {
  return { ...pair(...row), oneWay: true };
}

function within(species: string, source: string, note: string): Pair {
  return pair(species, species, "freely", source, note);
}

function group(id: string, name: string, ...relations: readonly Pair[]): CrossingGroup {
  return { id, name, relations };
}

const PEPO = "Cucurbita pepo";
const MAXIMA = "Cucurbita maxima";
const MOSCHATA = "Cucurbita moschata";
const ARGYROSPERMA = "Cucurbita argyrosperma";
const FICIFOLIA = "Cucurbita ficifolia";

const squash = group(
  "squash",
  "squash and pumpkin",
  within(
    PEPO,
    "seed-network-au",
    "bees carry pollen between all pepo squashes, pumpkins and ornamental gourds; only the seed shows it",
  ),
  pair(
    PEPO,
    MAXIMA,
    "no",
    "squash-five-species",
    "strong barriers; an Iowa bulletin raised weak hybrids by hand",
    "squash-bulletin-263",
  ),
  pair(
    PEPO,
    MOSCHATA,
    "rarely",
    "squash-pepo-moschata",
    "134 hand pollinations gave 4 fruits one way and none the other; The Seed Garden says no",
    "seed-garden",
  ),
  pair(
    PEPO,
    ARGYROSPERMA,
    "rarely",
    "interspecific-crosses",
    "hybrids were raised in 1902; The Seed Garden says no",
    "seed-garden",
  ),
  pair(
    MAXIMA,
    MOSCHATA,
    "rarely",
    "squash-maxima-moschata",
    "17 of 307 hand crosses set seed and the offspring were often sterile; The Seed Garden says no",
    "seed-garden",
  ),
  pair(
    MOSCHATA,
    ARGYROSPERMA,
    "sometimes",
    "national-gardening",
    "named as the one cross among squashes that happens by itself; The Seed Garden says no",
    "seed-garden",
  ),
  pair(MAXIMA, ARGYROSPERMA, "no", "squash-five-species"),
  pair(FICIFOLIA, PEPO, "no", "squash-five-species"),
  pair(FICIFOLIA, MAXIMA, "no", "squash-five-species"),
  pair(FICIFOLIA, MOSCHATA, "no", "squash-five-species"),
  pair(FICIFOLIA, ARGYROSPERMA, "no", "squash-five-species"),
);

const OLERACEA = "Brassica oleracea";
const RAPA = "Brassica rapa";
const NAPUS = "Brassica napus";
const JUNCEA = "Brassica juncea";
const NIGRA = "Brassica nigra";

const brassica = group(
  "brassica",
  "cabbage, turnip, mustard and rape",
  within(
    OLERACEA,
    "seed-garden",
    "cabbage, kale, broccoli, cauliflower, kohlrabi, collards and sprouts all cross",
  ),
  within(RAPA, "sussex", "turnip, Chinese cabbage, pak choi and mizuna all cross"),
  within(
    NAPUS,
    "brassica-outcrossing",
    "about a fifth of the seed is outcrossed between plants of one field",
  ),
  within(
    JUNCEA,
    "brassica-outcrossing",
    "about a fifth of the seed is outcrossed between plants of one field",
  ),
  pair(
    OLERACEA,
    RAPA,
    "no",
    "sussex",
    "not in garden practice; a Washington rule keeps all Brassica seed crops 2 miles apart all the same",
    "wac-16-326-040",
  ),
  pair(
    OLERACEA,
    NAPUS,
    "rarely",
    "rape-gene-transfer",
    "not among the species that cross with rape by open pollination; The Seed Garden says no",
    "seed-garden",
  ),
  pair(OLERACEA, JUNCEA, "no", "memory", "recalled: no genome in common"),
  pair(
    RAPA,
    NAPUS,
    "sometimes",
    "rape-gene-transfer",
    "they cross by open pollination; a seed bank's guide says species do not cross",
    "washburn",
  ),
  pair(
    RAPA,
    JUNCEA,
    "sometimes",
    "brassica-hybrids",
    "the two share a genome and hand crosses give vigorous hybrids, better with mustard as the seed parent; no figure from the field was seen, so it counts in full",
  ),
  pair(
    NAPUS,
    JUNCEA,
    "sometimes",
    "brassica-introgression",
    "mustard ranks second after turnip as recipient of rape pollen, also in the open",
  ),
  pair(
    JUNCEA,
    NIGRA,
    "rarely",
    "grin-black-mustard",
    "hybrids are reported with B. juncea as the seed parent",
  ),
  pair(
    OLERACEA,
    NIGRA,
    "rarely",
    "grin-black-mustard",
    "hybrids were made with B. oleracea as the pollen parent",
  ),
  pair(
    NAPUS,
    NIGRA,
    "rarely",
    "oecd-brassica",
    "hand crosses are difficult and the hybrids largely sterile",
  ),
  pair(RAPA, NIGRA, "rarely", "memory", "recalled, not checked"),
);

const ANNUUM = "Capsicum annuum";
const CHINENSE = "Capsicum chinense";
const FRUTESCENS = "Capsicum frutescens";
const BACCATUM = "Capsicum baccatum";
const PUBESCENS = "Capsicum pubescens";

const pepper = group(
  "pepper",
  "peppers",
  within(
    ANNUUM,
    "abundant-borders",
    "hot and sweet cross: the seed of a sweet pepper may grow hot ones",
  ),
  pair(
    ANNUUM,
    CHINENSE,
    "sometimes",
    "capsicum-crossability",
    "the offspring is partly fertile both ways; The Organic Seed Grower says they cross easily",
    "organic-seed-grower",
  ),
  pair(
    ANNUUM,
    FRUTESCENS,
    "sometimes",
    "capsicum-crossability",
    "partly fertile one way; guides contradict each other from no to easily",
    "washburn",
    "organic-seed-grower",
  ),
  pair(
    CHINENSE,
    FRUTESCENS,
    "sometimes",
    "capsicum-crossability",
    "the offspring is partly fertile both ways",
  ),
  pair(
    ANNUUM,
    BACCATUM,
    "rarely",
    "capsicum-crossability",
    "the seed germinates; fertility is not stated",
  ),
  pair(
    CHINENSE,
    BACCATUM,
    "rarely",
    "capsicum-crossability",
    "the seed germinates; fertility is not stated",
  ),
  pair(FRUTESCENS, BACCATUM, "rarely", "memory", "recalled, not checked"),
  pair(PUBESCENS, ANNUUM, "no", "capsicum-crossability"),
  pair(PUBESCENS, CHINENSE, "no", "capsicum-crossability"),
  pair(PUBESCENS, FRUTESCENS, "no", "capsicum-crossability"),
  pair(PUBESCENS, BACCATUM, "no", "capsicum-crossability"),
);

const CARROT = "Daucus carota";
const BEET = "Beta vulgaris";
const LETTUCE = "Lactuca sativa";
const SUNFLOWER = "Helianthus annuus";

export const crossingGroups: readonly CrossingGroup[] = [
  group(
    "tomato",
    "tomato",
    pair(
      "Solanum lycopersicum",
      "Solanum pimpinellifolium",
      "freely",
      "organic-seed-grower",
      "wild tomato species of at least two kinds cross readily with tomato",
    ),
  ),
  pepper,
  group("eggplant", "eggplant"),
  group(
    "husk-tomato",
    "husk tomato and tomatillo",
    pair(
      "Physalis pubescens",
      "Physalis philadelphica",
      "rarely",
      "memory",
      "recalled, not checked; the two share the name husk tomato",
    ),
  ),
  group("tobacco", "tobacco"),
  group(
    "bean",
    "common and runner bean",
    pair(
      "Phaseolus vulgaris",
      "Phaseolus coccineus",
      "rarely",
      "phaseolus-pulses",
      "each is the other's secondary gene pool and hybrids are partly fertile; Garden Organic says they cannot cross",
      "garden-organic-7",
    ),
  ),
  group("lima-bean", "lima bean"),
  group("broad-bean", "broad bean"),
  group("pea", "pea"),
  group("soybean", "soybean"),
  group("cowpea", "cowpea and yardlong bean"),
  group("mung-bean", "mung bean"),
  group("chickpea", "chickpea"),
  group("peanut", "peanut"),
  group("pigeon-pea", "pigeon pea"),
  group("hyacinth-bean", "hyacinth bean"),
  group("fenugreek", "fenugreek"),
  group("sweet-pea", "sweet pea"),
  squash,
  group("cucumber", "cucumber"),
  group("west-india-gherkin", "West India gherkin"),
  group(
    "melon",
    "melon",
    within(
      "Cucumis melo",
      "general-botany",
      "muskmelon, honeydew and Armenian cucumber are one species",
    ),
  ),
  group(
    "watermelon",
    "watermelon and citron",
    within("Citrullus lanatus", "manual-seed-saving", "all varieties cross, citron melon too"),
  ),
  group("bottle-gourd", "bottle gourd"),
  group(
    "luffa",
    "luffa",
    pair(
      "Luffa aegyptiaca",
      "Luffa acutangula",
      "sometimes",
      "echo-luffa",
      "said to cross within 1,500 ft",
    ),
  ),
  group("bitter-gourd", "bitter gourd"),
  group("wax-gourd", "wax gourd"),
  group(
    "maize",
    "maize",
    within(
      "Zea mays",
      "sweet-corn-isolation",
      "sweet, field, flint, dent and pop corn all cross, and the pollen changes this season's kernels",
    ),
  ),
  group(
    "sorghum",
    "sorghum",
    within(
      "Sorghum bicolor",
      "cfr-201-76",
      "grain and sweet sorghum, grass sorghum and broomcorn are one species",
    ),
    pair(
      "Sorghum bicolor",
      "Sorghum halepense",
      "sometimes",
      "eu-66-402",
      "the directive doubles the distance where johnsongrass is a crossing risk",
    ),
  ),
  group("wheat", "wheat"),
  group("barley", "barley"),
  group("oat", "oat"),
  group("rye", "rye", within("Secale cereale", "manual-seed-saving", "a strict outcrosser")),
  group("rice", "rice"),
  group("proso-millet", "proso millet"),
  group("foxtail-millet", "foxtail millet"),
  group("pearl-millet", "pearl millet"),
  group(
    "lettuce",
    "lettuce and prickly lettuce",
    pair(
      LETTUCE,
      "Lactuca serriola",
      "sometimes",
      "lettuce-hybrids",
      "0 to 26 percent hybrids, falling with distance; still 4 to 5 percent of the wild plants at 40 m",
    ),
  ),
  group(
    "sunflower",
    "sunflower",
    within(
      SUNFLOWER,
      "cfr-201-76",
      "the table asks a mile from wild types and volunteers (footnote 45)",
    ),
    pair(
      SUNFLOWER,
      "Helianthus tuberosus",
      "rarely",
      "memory",
      "recalled: unlike chromosome numbers",
    ),
  ),
  group(
    "chicory",
    "chicory and endive",
    oneWay(
      "Cichorium intybus",
      "Cichorium endivia",
      "sometimes",
      "manual-seed-saving",
      "endive pollinates chicory; the directive keeps industrial chicory 1000 m from other species of the genus",
    ),
    oneWay(
      "Cichorium endivia",
      "Cichorium intybus",
      "no",
      "manual-seed-saving",
      "endive pollinates itself and takes no pollen of chicory; a film and a seed network say the same",
    ),
  ),
  group("cynara", "artichoke and cardoon"),
  group("safflower", "safflower"),
  group("calendula", "calendula"),
  group(
    "marigold",
    "marigold",
    pair(
      "Tagetes erecta",
      "Tagetes patula",
      "rarely",
      "tagetes-course",
      "triploid hybrids of the two are made and grown; recalled as sterile",
    ),
  ),
  group("zinnia", "zinnia"),
  group("cosmos", "cosmos"),
  group(
    "beet",
    "beet and chard",
    within(BEET, "diy-seeds", "beet, chard, sugar beet, fodder beet and sea beet are one species"),
  ),
  group("spinach", "spinach"),
  group(
    "amaranth",
    "amaranth and pigweed",
    pair(
      "Amaranthus hypochondriacus",
      "Amaranthus hybridus",
      "sometimes",
      "amaranth-pigweed",
      "at most 12.9 percent within 10 m, 0.45 percent at 150 m",
    ),
    pair("Amaranthus hypochondriacus", "Amaranthus caudatus", "sometimes", "amaranth-page"),
    ...["hypochondriacus", "caudatus", "cruentus", "hybridus"].map((species) =>
      pair(
        "Amaranthus tricolor",
        `Amaranthus ${species}`,
        "rarely",
        "memory",
        "recalled: leaf amaranth is of another subgenus",
      ),
    ),
  ),
  group(
    "quinoa",
    "quinoa",
    pair(
      "Chenopodium quinoa",
      "Chenopodium album",
      "rarely",
      "memory",
      "recalled: unlike chromosome numbers",
    ),
    pair(
      "Chenopodium quinoa",
      "Chenopodium berlandieri",
      "sometimes",
      "quinoa-weeds",
      "over 30 percent of the offspring of weeds standing in quinoa were hybrids",
    ),
  ),
  group("orach", "orach"),
  group(
    "carrot",
    "carrot and wild carrot",
    within(
      CARROT,
      "manual-seed-saving",
      "the offspring of wild carrot shows white fibrous roots or bolts in its first year",
    ),
  ),
  group(
    "parsnip",
    "parsnip and wild parsnip",
    within(
      "Pastinaca sativa",
      "manual-seed-saving",
      "cultivated and wild parsnip cross without isolation",
    ),
  ),
  group(
    "celery",
    "celery and celeriac",
    within(
      "Apium graveolens",
      "diy-seeds",
      "celery, celeriac, leaf celery and wild celery are one species",
    ),
  ),
  group("parsley", "parsley"),
  group("coriander", "coriander"),
  group("dill", "dill"),
  group("fennel", "fennel"),
  group("caraway", "caraway"),
  group(
    "onion",
    "onion",
    pair(
      "Allium cepa",
      "Allium fistulosum",
      "rarely",
      "manual-seed-saving",
      "not out of the question; another guide reports embryo rescue only",
    ),
  ),
  group(
    "leek",
    "leek",
    within(
      "Allium ampeloprasum",
      "general-botany",
      "leek and elephant garlic are one species and cross if they flower",
    ),
  ),
  group("chives", "chives"),
  brassica,
  group("white-mustard", "white mustard"),
  group(
    "radish",
    "radish and wild radish",
    within("Raphanus sativus", "manual-seed-saving", "summer and winter radish cross"),
    pair(
      "Raphanus sativus",
      "Raphanus raphanistrum",
      "freely",
      "garden-chart",
      "the chart warns of wild radishes",
    ),
  ),
  group("rocket", "rocket"),
  group("okra", "okra"),
  group("basil", "basil"),
  group("buckwheat", "buckwheat"),
  group("flax", "flax"),
  group("sesame", "sesame"),
  group("asparagus", "asparagus"),
  group("corn-salad", "corn salad"),
  group("nasturtium", "nasturtium"),
];

/** Pairs of different groups that growers ask about, with who says they do not cross. */
export const knownSeparations: readonly SpeciesRelation[] = [
  pair(BEET, "Spinacia oleracea", "no", "garden-organic-16"),
  pair("Allium cepa", "Allium ampeloprasum", "no", "manual-seed-saving"),
  pair("Allium cepa", "Allium schoenoprasum", "no", "manual-seed-saving"),
  pair(CARROT, "Pastinaca sativa", "no", "koanga"),
  pair("Raphanus sativus", OLERACEA, "no", "manual-seed-saving"),
  pair("Raphanus sativus", RAPA, "no", "manual-seed-saving"),
  pair("Eruca sativa", OLERACEA, "no", "issi"),
  pair("Eruca sativa", RAPA, "no", "issi"),
  pair("Cucumis sativus", "Cucumis melo", "no", "vine-crops-answer"),
  pair("Cucumis sativus", "Cucumis anguria", "no", "memory", "recalled, not checked"),
  pair("Lagenaria siceraria", PEPO, "no", "washburn"),
  pair("Lagenaria siceraria", MAXIMA, "no", "washburn"),
];
