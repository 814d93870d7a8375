/** Safety cautions. Each is short and defers to local rules; those tied to kinds are named there. */
export interface Caution {
  readonly id: string;
  readonly title: string;
  readonly text: string;
  /** Id of a source (sources.ts). */
  readonly source: string;
}

export const cautions: readonly Caution[] = [
  {
    id: "bitter-cucurbits",
    title: "Bitter squash can poison",
    text: "Seed of squash, cucumber, melon or gourd that crossed with an ornamental or wild relative can give bitter fruit that makes people ill, cooked or not. Taste a small raw piece of every seed fruit, spit it out, and discard fruit and seed if it is bitter. Do not eat from compost volunteers.",
    source: "bitter-squash",
  },
  {
    id: "raw-beans",
    title: "Raw beans are poisonous",
    text: "Dry seed of common, runner and lima beans makes people ill when eaten raw or half cooked. Keep seed away from children and boil beans thoroughly.",
    source: "general-caution",
  },
  {
    id: "poisonous-seed",
    title: "The seed is poisonous",
    text: "The seed of this kind is poisonous or counted so. Label packets, store them away from food and out of children's reach.",
    source: "general-caution",
  },
  {
    id: "favism",
    title: "Broad beans can make some people gravely ill",
    text: "People with the inherited lack of an enzyme (G6PD) can fall gravely ill from broad beans, fresh or dry. Tell those you pass seed or beans on to, and leave it to a doctor who may eat them.",
    source: "general-caution",
  },
  {
    id: "ergot",
    title: "Watch rye for ergot",
    text: "Hard dark spurs in ears of rye, and at times of other cereals and grasses, are ergot: poisonous to people and animals. Take spurred ears out, neither eat nor feed nor sow the spurs, and wash your hands.",
    source: "general-caution",
  },
  {
    id: "bitter-gourd",
    title: "Ripe seed of bitter gourd is not food",
    text: "Ripe fruit and seed of bitter gourd have made people ill, children above all. Keep the red seed away from children, and ask a doctor about eating bitter gourd in pregnancy or beside medicines for sugar.",
    source: "general-caution",
  },
  {
    id: "seed-districts",
    title: "Some districts bind who grows Brassica or beet for seed",
    text: "Where cabbage, mustard, rape or beet seed is grown for the trade, rules may set distances and ask every grower, gardeners too, to enter seed plots on a common map. Ask your authority or seed growers' association first.",
    source: "wac-16-326-040",
  },
  {
    id: "treated-seed",
    title: "Treated seed is neither food nor feed",
    text: "Never eat or feed seed treated with a pesticide, nor mix it with other seed. Keep its colour and label, wear gloves, and follow the label and local rules.",
    source: "general-caution",
  },
  {
    id: "hot-into-sweet",
    title: "A crossed sweet pepper may be hot",
    text: "Seed of a sweet pepper crossed by a hot one grows hot fruit: unpleasant, not poisonous. Say so when you share seed whose isolation is in doubt.",
    source: "abundant-borders",
  },
  {
    id: "hot-pepper-handling",
    title: "Wear gloves for hot peppers",
    text: "Seed and dust of hot peppers burn skin, eyes, nose and throat. Wear gloves, work in moving air, and wash hands before touching your face.",
    source: "general-caution",
  },
  {
    id: "parsnip-sap",
    title: "Sap that blisters skin in the sun",
    text: "Sap of parsnip, wild parsnip, celery and some of their relatives followed by sunlight blisters skin. Cover arms and hands, above all in bloom and at harvest.",
    source: "manual-seed-saving",
  },
  {
    id: "regulated-species",
    title: "This species may be regulated",
    text: "In some places growing, keeping or moving this species or its seed is restricted, or it counts as a noxious weed. Ask your local authority before you plant or share it.",
    source: "general-caution",
  },
  {
    id: "seed-law",
    title: "Selling seed falls under seed law",
    text: "Most countries ask sellers of seed for labels, tests, registration or permission, and some protect varieties. Rules differ from place to place: read those of yours before you sell or swap.",
    source: "general-caution",
  },
];
