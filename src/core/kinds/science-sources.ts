/** Papers on crossing, flowering and seed. Titles are shortened; journals are the publishers. */
import type { Source } from "./crop.ts";

function paper(id: string, title: string, publisher: string, edition: string): Source {
  return { id, title, publisher, edition, trust: "seen", authority: "book" };
}

export const scienceSources: readonly Source[] = [
  paper(
    "capsicum-crossability",
    "Genetic Resources of Capsicum, crossability matrix, Fig. 3",
    "IBPGR, FAO",
    "1983",
  ),
  paper(
    "squash-pepo-moschata",
    "Attempts to cross Cucurbita moschata and C. pepo, Report 2:32-34",
    "Cucurbit Genetics Cooperative",
    "1979",
  ),
  paper(
    "squash-bulletin-263",
    "Species and varietal crosses in cucurbits, Bulletin 263",
    "Iowa Agricultural Experiment Station",
    "year not shown",
  ),
  paper(
    "squash-maxima-moschata",
    "Cucurbita maxima x C. moschata hybridisation",
    "International Journal of Horticultural Science and Technology",
    "2025",
  ),
  paper(
    "squash-five-species",
    "Five cultivated species of Cucurbita and C. lundelliana, doi 10.1086/281923",
    "American Naturalist",
    "year not shown",
  ),
  paper(
    "interspecific-crosses",
    "Interspecific and Intergeneric Crosses (result of 1902)",
    "book, publisher not shown in the copy seen",
    "1997",
  ),
  paper(
    "lettuce-hybrids",
    "Hybridisation of lettuce and prickly lettuce, 7:61-71",
    "Environmental Biosafety Research",
    "2008",
  ),
  paper(
    "amaranth-pigweed",
    "Cross-pollination of grain amaranth and pigweed, 14(12):2925",
    "Agronomy",
    "2024",
  ),
  paper(
    "brassica-outcrossing",
    "Outcrossing in rape and mustard under field conditions",
    "Canadian Journal of Plant Science",
    "1980s",
  ),
  paper(
    "cosmos-trial",
    "Isolation distance for cut flower seed, cosmos trial",
    "Ecological Farmers Association of Ontario",
    "2021",
  ),
  paper(
    "tomato-seed-harvest",
    "Tomato seed harvest time, 1:1-10",
    "Research Journal of Seed Science",
    "2008",
  ),
  paper(
    "pepper-seed-harvest",
    "Harvesting time and seed quality of bell pepper, 49(2):67-77",
    "Revista FCA UNCUYO",
    "2017",
  ),
  paper(
    "onion-flowering",
    "Flowering of two onion cultivars, doi 10.1590/S0100-84042005000200012",
    "Revista Brasileira de Botanica",
    "2005",
  ),
  paper(
    "maize-silking",
    "Flowering and maturation of grain maize under British conditions",
    "Journal of Agricultural Science",
    "n.d.",
  ),
  paper(
    "moschata-stages",
    "Growth stages of Cucurbita moschata by heat, 21(2)",
    "Agrociencia Uruguay",
    "2017",
  ),
  paper(
    "chickpea-stages",
    "Phenological development of chickpeas, Canterbury",
    "abstract at discovery.researcher.life",
    "n.d.",
  ),
  paper(
    "rape-gene-transfer",
    "Opportunities for gene transfer from oilseed rape to related species, 3:263-278",
    "Transgenic Research",
    "volume 3",
  ),
  paper(
    "brassica-introgression",
    "Introgression from Brassica napus to B. juncea and relatives, 64:74-82",
    "Breeding Science",
    "2014",
  ),
  paper(
    "brassica-hybrids",
    "Interspecific hybridization in Brassica, congress paper 516",
    "GCIRC, regional.org.au",
    "n.d.",
  ),
  paper(
    "grin-black-mustard",
    "Taxon page of Brassica nigra, gene sources",
    "United States Department of Agriculture, GRIN",
    "2011",
  ),
  paper(
    "phaseolus-pulses",
    "Evolution of grain legumes IV, pulses in the genus Phaseolus",
    "Experimental Agriculture",
    "n.d.",
  ),
  paper(
    "quinoa-weeds",
    "Crop and weed gene flow, Chenopodium quinoa and C. berlandieri, 86:642-648",
    "Theoretical and Applied Genetics",
    "1993",
  ),
  paper(
    "tagetes-course",
    "Tagetes, week 4 plants of a horticulture course",
    "Penn State University",
    "2021",
  ),
  paper(
    "cabbage-seed",
    "Seed position, harvest date and drying of cabbage seed, 60:65-75",
    "Journal of Horticultural Science",
    "1985",
  ),
  paper(
    "carrot-seed-tasmania",
    "Cutting cool temperate carrot seed crops; 35 days: Ciencia e Agrotecnologia 2017",
    "Central Queensland University",
    "n.d.",
  ),
  paper(
    "onion-seed-israel",
    "Flowering and seed maturation of the onion crop",
    "not shown in the copy seen",
    "n.d.",
  ),
  paper(
    "watermelon-seed",
    "Watermelon seed germination during development",
    "abstract at scite.ai",
    "n.d.",
  ),
  paper(
    "cucurbit-fruit-age",
    "Fruit age, fermentation and storage in germination of cucurbit seeds",
    "abstract at discovery.researcher.life",
    "n.d.",
  ),
  paper(
    "pepper-seed-vigour",
    "Sweet pepper, Scientia Agricola 68(5); bell pepper, Revista FCA UNCUYO 49(2)",
    "Vidigal and others; Ruiz and Parera",
    "2011 and 2017",
  ),
  paper(
    "cgn-crucifers",
    "Regeneration of miscellaneous crucifers",
    "Centre for Genetic Resources, the Netherlands",
    "n.d.",
  ),
  {
    id: "fao-crop-defaults",
    title: "Default crop parameters of the water productivity model, crop_params of an open copy",
    publisher: "FAO",
    edition: "October 2025",
    trust: "seen",
    authority: "book",
  },
  {
    id: "open-crop-parameters",
    title: "Crop parameters of the WOFOST simulation model, open table",
    publisher: "Wageningen University & Research",
    edition: "June 2025",
    trust: "seen",
    authority: "book",
  },
];
