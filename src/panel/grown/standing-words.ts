/** Words of bloom dates offered from the records of seasons before. */
import { listed } from "../../core/checks/wording.ts";
import { longDate, shortDate } from "../../core/model/day.ts";
import { STANDING_MARGIN_DAYS, type StandingBloom } from "../../core/record/standing-bloom.ts";

export const standingWords = {
  /** `Seen in flower after a winter: 2026 Grey Fold 28 Apr to 10 Jun.` */
  seen: ({ seen }: StandingBloom) =>
    `Seen in flower here after a winter: ${listed(
      seen.map(
        ({ season, variety, first, last }) =>
          `${variety} ${season}, ${last === null ? `from ${shortDate(first)} on` : `${shortDate(first)} to ${shortDate(last)}`}`,
      ),
    )}.`,
  offered: ({ of, offered }: StandingBloom) =>
    `With ${STANDING_MARGIN_DAYS[of]} days to either side, as ${
      of === "variety" ? "one season is one weather" : "varieties of a kind differ"
    }: ${longDate(offered.first)} to ${longDate(offered.last)}, a rule of thumb.`,
  apply: "Apply these days",
  step: (code: string) => `Take bloom of ${code} from seasons before`,
} as const;
