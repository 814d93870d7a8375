/** Seed-saving books, guides, extension pages; common practice; what was recalled unchecked. */
import type { Source } from "./crop.ts";

function book(id: string, title: string, publisher: string, edition: string): Source {
  return { id, title, publisher, edition, trust: "seen", authority: "book" };
}

/** An article or answer in a magazine: seen, and no more than a page. */
function article(id: string, title: string, publisher: string, edition: string): Source {
  return { id, title, publisher, edition, trust: "seen", authority: "other" };
}

function page(id: string, title: string, publisher: string, edition = "n.d."): Source {
  return { id, title, publisher, edition, trust: "seen", authority: "other" };
}

export const practiceSources: readonly Source[] = [
  {
    id: "home-practice",
    title: "Common practice among home seed growers",
    publisher: "none",
    edition: "n.d.",
    trust: "common practice",
  },
  {
    id: "own",
    title: "Typed for this plan",
    publisher: "the grower",
    edition: "n.d.",
    trust: "own figure",
  },
  {
    id: "general-botany",
    title: "General botany of the kind",
    publisher: "none",
    edition: "n.d.",
    trust: "common practice",
  },
  {
    id: "general-caution",
    title: "General caution of the trade",
    publisher: "none",
    edition: "n.d.",
    trust: "common practice",
  },
  {
    id: "memory",
    title: "Recalled, not checked against a source",
    publisher: "none",
    edition: "n.d.",
    trust: "from memory",
  },
  book(
    "manual-seed-saving",
    "The Manual of Seed Saving",
    "Timber Press",
    "2013, publisher and year recalled",
  ),
  book("organic-seed-grower", "The Organic Seed Grower", "Chelsea Green", "2012"),
  book("seed-garden", "The Seed Garden", "Seed Savers Exchange", "2015"),
  article("easiest-seed-crops", "The Easiest Seed-Saving Crops", "Mother Earth News", "1987"),
  article("isolation-methods-1978", "Isolation methods note", "Mother Earth News", "1978"),
  article(
    "cucurbit-plan-2014",
    "Planning Your Garden for Seed Saving: Cucurbits",
    "Mother Earth News",
    "2014",
  ),
  article(
    "national-gardening",
    "Breeding Your Own Squash",
    "National Gardening Association",
    "n.d.",
  ),
  book(
    "polytunnel",
    "How to Grow Food in Your Polytunnel, seed saving",
    "not shown in the copy seen",
    "n.d.",
  ),
  book(
    "diy-seeds",
    "DIY Seeds educational films, text",
    "Longo mai and European Civic Forum",
    "n.d.",
  ),
  book(
    "issi",
    "Specific Seed Saving Instructions for Common Vegetables",
    "International Seed Saving Institute",
    "n.d.",
  ),
  book("garden-organic-7", "Seed Saving Guideline No. 7, Runner Beans", "Garden Organic", "n.d."),
  book(
    "garden-organic-16",
    "Seed Saving Guideline No. 16, Beetroot and Chard",
    "Garden Organic",
    "n.d.",
  ),
  book(
    "seeds-of-diversity-2017",
    "How to Plan a Seed Saving Garden for Beginners",
    "Seeds of Diversity Canada",
    "2017",
  ),
  book(
    "seeds-of-diversity-2015",
    "Keeping Varieties Isolated",
    "Seeds of Diversity Canada",
    "2015",
  ),
  book(
    "seeds-of-diversity-2023",
    "Growing Grains for Conservation",
    "Seeds of Diversity Canada",
    "2023",
  ),
  book(
    "espace-selfers",
    "Self-pollinating plants",
    "Espace pour la vie, Montreal Botanical Garden",
    "n.d.",
  ),
  book("echo-luffa", "Luffa gourd seed note", "ECHO", "n.d."),
  book(
    "oecd-brassica",
    "Safety Assessment of Transgenic Organisms, Volume 5, Brassica crops, page 188",
    "OECD",
    "2016",
  ),
  book(
    "pollination-handbook",
    "Insect Pollination of Cultivated Crop Plants, Agriculture Handbook 496",
    "United States Department of Agriculture",
    "1976",
  ),
  book(
    "corn-planting-2003",
    "Days from planting to silk, Purdue and Ohio State trials",
    "University of Maryland Extension",
    "2018",
  ),
  book(
    "corn-pollination-overview",
    "Corn pollination overview, Ohio State text",
    "Farm Progress",
    "n.d.",
  ),
  book(
    "corn-growing-degrees",
    "Corn growing degree days to silk, and Purdue figure to emergence",
    "High Plains Regional Climate Center; Purdue University",
    "n.d.",
  ),
  book(
    "sunflower-staging",
    "Sunflower staging and heat, base 6.7 C",
    "Manitoba crop extension, cropchatter.com",
    "n.d.",
  ),
  article(
    "sweet-corn-isolation",
    "Isolation of supersweet corn, answer 6293: two weeks between maturity dates",
    "National Gardening Association",
    "1998",
  ),
  page(
    "silking-extension",
    "Extension text on isolating sweet corn by silking dates, as quoted in a forum",
    "author and publisher not shown in the copy seen",
  ),
  page(
    "corn-distance-notes",
    "Seed Saving 101: isolation distances for corn",
    "Missing Henry Mitchell",
    "about 2013",
  ),
  page("corn-yards", "Growing corn, isolation", "98905.com"),
  page(
    "promiscuous-pollination",
    "Easy Seed Saving with Promiscuous Pollination",
    "Southern Exposure Seed Exchange",
    "about 2021",
  ),
  page("melon-page", "Melon Seed Saving", "Amy Goldman Fowler"),
  page("southern-seed", "Species pages, Alliaceae", "Southern Seed Exchange, New Zealand"),
  page("runabergs", "Seed growing sheets", "Runabergs Froer, Sweden"),
  page("flower-list-1999", "Cross-pollination in flower varieties", "list post, J. Rowe", "1999"),
  book(
    "seed-longevity-1912",
    "The Longevity of Seeds, in Vegetable Gardening",
    "not shown in the copy seen",
    "about 1912",
  ),
  book("beet-guide", "Growing guide: beets", "Cornell University Home Gardening", "n.d."),
  page("vine-crops-answer", "Vine growing, answer 44979", "National Gardening Association"),
  page("bitter-squash", "Get it Growing: toxic squash, Master Gardeners' column", "Sequim Gazette"),
  page("garden-chart", "Seed Saving Chart, garden scale", "not shown in the copy seen"),
  page("learn-seed-saving", "Learn Seed Saving guide", "learnseedsaving.com"),
  page("seed-network-au", "Species sheets", "Seed Savers' Network, Australia"),
  page("koanga", "Seed saving by family", "Koanga Institute, New Zealand"),
  page("nz-legumes", "Leguminosae", "NZ Seed Savers", "2022"),
  page("sussex", "Crop pages", "Sussex Community Seed Bank"),
  page("permaculture-wales", "Seed saving", "Permaculture Wales"),
  page("abundant-borders", "Seed saving A to Z, chilli peppers", "Abundant Borders"),
  page("washburn", "Family pages", "Washburn's Community Seed Bank"),
  page("hartland", "Lettuce", "Hartland Seed Library"),
  page("livingseeds", "Maize stand size", "Livingseeds"),
  page("amaranth-page", "Amaranth seed saving", "encyclopedia mirror, liquisearch.com"),
  page("marigold-notes", "Marigold and zinnia seed saving notes", "Social Roots Seeds"),
  page(
    "brassica-crop-notes",
    "Chinese cabbage, pak choi and mizuna seed crop notes",
    "Jensen Seeds, Denmark",
  ),
  page("shelf-life", "Seed storage shelf life, most useful years", "Urban Food Garden, Australia"),
  page("sowing-chart", "Seed count and planting chart", "Huebner's Lawn and Garden"),
  page("sowing-guide", "Vegetable planting guide", "Fedco Seeds"),
  page("apiaceae-agronomy", "Apiaceae agronomy sheet, seed crops", "not shown in the copy seen"),
];
