/** `wideberth check FILE`: prints the findings; 1 when there is a conflict. */
import { type CheckedLayout, checkLayout } from "../core/checks/checked-layout.ts";
import { fieldChangeLines } from "../core/record/field-words.ts";
import type { DayNumber } from "../core/model/day.ts";
import { today } from "./clock.ts";
import { checkReportJson, checkReportLines } from "../core/files/check-report.ts";
import { checkRegister } from "./register/check-register.ts";
import { openBytes } from "./input-bytes.ts";
import { startsRegister } from "./register/json-texts.ts";
import { onlyArgument, parseOptions, usage } from "./options.ts";
import { checkedAs, dayOfReading, readingOptions } from "./reading-option.ts";
import { openInput } from "./read-input.ts";
import { gathered, writeSteadily } from "./write-steadily.ts";

export async function check(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("check", args, {
    json: { type: "boolean", default: false },
    all: { type: "boolean", default: false },
    estimate: { type: "boolean", default: false },
    years: { type: "boolean", default: false },
    ways: { type: "boolean", default: false },
    layout: { type: "string" },
    threads: { type: "string" },
    ...readingOptions,
  });
  const grownOn = dayOfReading("check", values);
  const path = onlyArgument("check", "FILE", positionals);
  const bytes = await openBytes(path);
  if (startsRegister(bytes.file, bytes.start)) {
    if (values.all) throw usage("check", "--all would list every pair of a register");
    if (values.estimate) throw usage("check", "--estimate takes no register");
    if (values.years) throw usage("check", "a register has no record of days to try years on");
    if (values.ways) throw usage("check", "--ways takes no register");
    if (values.layout !== undefined) throw usage("check", "a register has no layouts to choose");
    if (grownOn !== null) throw usage("check", "a register has no field record");
    const threads = threadsOf(values.threads);
    return checkRegister(bytes.all, { file: bytes.file, isJson: values.json, ...threads });
  }
  if (values.threads !== undefined) throw usage("check", "--threads takes a register");
  if (values.ways && grownOn !== null) {
    throw usage(
      "check",
      "--ways are those of the plan; what the field still allows is told without",
    );
  }
  const { plan, layout, file, from } = await openInput(bytes, values.layout);
  const planned = checkLayout(plan, layout.id);
  const checked = grownOn === null ? planned : checkedAs(plan, layout.id, grownOn);
  const report = {
    ...checked,
    file,
    isAll: values.all,
    isEstimated: values.estimate,
    isYears: values.years,
    isWithWays: values.ways,
    isAroundTold: from === "plan",
  };
  const texts = values.json ? checkReportJson(report) : checkReportLines(report);
  if (grownOn !== null && !values.json) await writeSteadily(fieldWords(planned, checked, grownOn));
  for (const piece of gathered(texts)) await writeSteadily(piece);
  return checked.result.counts.conflict > 0 ? 1 : 0;
}

/** How many threads to check a register on, where that is said. */
function threadsOf(text: string | undefined): { readonly threads?: number } {
  if (text === undefined) return {};
  const threads = Number(text);
  if (Number.isInteger(threads) && threads >= 1 && threads <= 64) return { threads };
  throw usage("check", `--threads got "${text}", expected a number from 1 to 64`);
}

function fieldWords(planned: CheckedLayout, grown: CheckedLayout, on: DayNumber): string {
  return `${fieldChangeLines(planned, grown, on, today(new Date())).join("\n")}\n\n`;
}
