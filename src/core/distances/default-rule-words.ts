/** By which rule a figure is chosen. Apart from what findings say, since only pages of figures tell it. */

/** The rule `requiredDistance` follows, one step a line, as shown to growers. */
export const defaultRule: readonly string[] = [
  "A distance typed for the planting or the variety, or a figure picked by hand, goes before everything below; then a distance typed for the kind at this level.",
  "Figures published for the variety's flower form are taken; where there are none, those for any form. Where the form decides and is not said, the longest distance of the forms is taken, and the form is asked for.",
  "Figures for another purpose are passed over, though listed: hybrid seed and its parent lines, mother bulbs that do not flower, a rule that binds one district only, a distance shown to be too short.",
  "For seed kept at home: common home practice where it is listed; else what books, guides and pages written for gardens print for this very kind. The middle of their figures is taken, of two middles the larger; one that lies far from all others is set aside, and says so. Where gardens have no figure that names the kind, the figure of seed law for seed for sale fills in, or a garden figure stretched from another kind where that is more.",
  "For seed for sale and stock seed: the largest figure of seed law that names the kind; where no law names it, the middle of what books and pages print for seed that is sold.",
  "Teaching pages that restate a law, our readings of a law, and figures stretched from another kind may raise a distance found by law or books for sale and stock seed, or fill in where there is none. They never lower one. Figures of doubtful pages, then recalled ones, are taken only where nothing else is found, and are labelled.",
  "A published 0 speaks of mixing at harvest, not of pollen; any other figure found by these steps goes before it, and where it stands alone plantings closer than a strip of 10 ft (3 m) still get a word, see the check `mixing`.",
  "A level without a figure takes that of the next stricter level. A stricter level is never asked less than a laxer one. Where neither the level nor a stricter one has a figure, that of the laxer level is the least: anything short of it is a conflict, and beyond it the distance is unknown and a finding says so.",
  "From a wild or weedy plant the increase its sources ask for is added unasked, and named; a distance typed by hand stands as it is.",
  "Where still nothing is found the distance is unknown, and a finding says so.",
];
