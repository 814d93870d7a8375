/** Seed law, certification rules, and pages that state them. */
import type { Source } from "./crop.ts";

const SEEN = { trust: "seen", authority: "regulator" } as const;
/** A page that restates a rule whose official text was not seen. */
const TEACHING = { trust: "seen", authority: "teaching" } as const;

const US = "United States, Code of Federal Regulations";
const US_EDITION = "2015 annual edition";

export const regulationSources: readonly Source[] = [
  {
    id: "cfr-201-76",
    title: "7 CFR 201.76 Table 5, minimum land, isolation, field and seed standards",
    publisher: US,
    edition: US_EDITION,
    ...SEEN,
  },
  {
    id: "cfr-201-31",
    title: "7 CFR 201.31, germination standards for vegetable seeds",
    publisher: US,
    edition: US_EDITION,
    ...SEEN,
  },
  {
    id: "cfr-201-46",
    title: "7 CFR 201.46 Table 1, weights of working samples (seeds per gram)",
    publisher: US,
    edition: US_EDITION,
    ...SEEN,
  },
  {
    id: "eu-2002-55",
    title: "Directive 2002/55/EC on vegetable seed, Annex I point 4",
    publisher: "European Union",
    edition: "text as retained at legislation.gov.uk",
    ...SEEN,
  },
  {
    id: "de-saatv",
    title: "Saatgutverordnung Annex 2, national implementation of Directive 2002/55/EC",
    publisher: "Federal Republic of Germany",
    edition: "n.d.",
    ...SEEN,
  },
  {
    id: "eu-2002-57",
    title: "Directive 2002/57/EC on seed of oil and fibre plants, Annex I point 2",
    publisher: "European Union",
    edition: "as amended by 2009/74/EC",
    ...SEEN,
  },
  {
    id: "scotland-2004-317",
    title: "Oil and Fibre Plant Seed (Scotland) Regulations 2004, Schedule 4, for 2002/57/EC",
    publisher: "Scottish Statutory Instruments 2004/317",
    edition: "2004",
    ...SEEN,
  },
  {
    id: "eu-66-402",
    title: "Directive 66/402/EEC on cereal seed, Annex I point 2",
    publisher: "European Union",
    edition: "as replaced by Implementing Directive (EU) 2018/1027",
    ...SEEN,
  },
  {
    id: "eu-66-401",
    title: "Directive 66/401/EEC on fodder plant seed, Annex I",
    publisher: "European Union",
    edition: "text as retained at legislation.gov.uk",
    ...SEEN,
  },
  {
    id: "wales-2005-3037",
    title: "Beet Seed (Wales) Regulations 2005, Schedule 3, for Directive 2002/54/EC",
    publisher: "Welsh Statutory Instruments 2005/3037",
    edition: "2005",
    ...SEEN,
  },
  {
    id: "icar-ecourse",
    title: "Seed certification standards as taught in the ICAR e-courses",
    publisher: "Indian Council of Agricultural Research",
    edition: "n.d.",
    ...TEACHING,
  },
  {
    id: "india-palak",
    title: "Seed production page on leaf beet (palak)",
    publisher: "not shown on the page",
    edition: "n.d.",
    trust: "seen",
    authority: "other",
  },
  {
    id: "india-secondary",
    title: "Isolation distance table of a study site, stated for Indian certification",
    publisher: "agribooks.co",
    edition: "n.d.",
    trust: "seen",
    authority: "other",
  },
  {
    id: "tnau",
    title: "Seed production pages for farmers, vegetables",
    publisher: "Tamil Nadu Agricultural University",
    edition: "n.d.",
    trust: "seen",
    authority: "teaching",
  },
  {
    id: "fao-qds",
    title: "Quality Declared Seed field standards, Annex II of a workshop",
    publisher: "FAO, as restated by ICARDA",
    edition: "n.d.",
    ...TEACHING,
  },
  {
    id: "wac-16-326-040",
    title: "WAC 16-326-040, Brassica seed production district",
    publisher: "State of Washington",
    edition: "n.d.",
    ...SEEN,
  },
  {
    id: "wac-16-302-290",
    title: "WAC 16-302-290, field standards for corn seed certification",
    publisher: "State of Washington",
    edition: "n.d.",
    ...SEEN,
  },
  {
    id: "wac-16-302-295",
    title: "WAC 16-302-295, hybrid corn: distance and border rows",
    publisher: "State of Washington",
    edition: "2022 archive",
    ...SEEN,
  },
  {
    id: "oklahoma-cowpea",
    title: "Seed certification standards, cowpea",
    publisher: "Oklahoma Crop Improvement Association",
    edition: "n.d.",
    ...SEEN,
  },
];
