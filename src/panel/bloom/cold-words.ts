/** Whether a winter is cold enough for a biennial, in words. */
import { type ColdFelt, coldVerdict } from "../../core/calendar/cold-felt.ts";
import { CARROT_COLD } from "../../core/calendar/vernalization.ts";
import { shortDate } from "../../core/model/day.ts";

/** What a biennial needs before it flowers, with numbers where a published function gives them. */
export function coldWords(felt: ColdFelt | null, kindName: string): string {
  if (felt === null) {
    return `${capital(kindName)} is a biennial: it flowers only after a winter's cold, as a root or plant of last year.`;
  }
  const until = `from ${shortDate(felt.winter.first)} to ${shortDate(felt.winter.last)}`;
  if (felt.kind === "days") return `${coldDaysWords(felt, until)} ${verdictWords(felt)}`;
  if (felt.kind === "carrot") {
    return (
      `Cold felt outdoors here ${until}: ${Math.round(felt.cDays)} C-days. The first carrots flower after ` +
      `${CARROT_COLD.first}, nine in ten after ${CARROT_COLD.most}, counted from 8 to 12 leaves on ` +
      "(Atherton and others 1990). " +
      verdictWords(felt) +
      " Roots from a store feel the store instead: at 4 °C that takes 25 to 67 days."
    );
  }
  return (
    `Cold felt outdoors here ${until}: ${Math.round(felt.days)} days that count in full, which meets ` +
    `${percent(felt.share)} of the cold they need; 30 days meet half (Streck 2003). ${verdictWords(felt)} Bulbs from a store feel ` +
    "the store instead: 5 to 13 °C for 90 to 120 days."
  );
}

function coldDaysWords({ days, need }: Extract<ColdFelt, { kind: "days" }>, until: string): string {
  const [least, most] = need.bandC;
  const undone =
    need.undoneFromC === null
      ? ""
      : ` A warm store or house, from ${need.undoneFromC} °C, undoes it.`;
  return `Cold felt outdoors here ${until}: ${days} days with a mean of ${least} to ${most} °C. Needed: ${need.source}.${undone}`;
}

function verdictWords(felt: ColdFelt): string {
  switch (coldVerdict(felt)) {
    case "met":
      return "So what stands or lies outdoors here is ready to flower.";
    case "partly":
      return "So some of what stands outdoors here may flower, and some may not.";
    case "not met":
      return "So what stands outdoors here will hardly flower: give it the rest of its cold in a store.";
  }
}

function percent(share: number): string {
  return share > 0.995 ? "nearly all" : `${Math.round(share * 100)} %`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
