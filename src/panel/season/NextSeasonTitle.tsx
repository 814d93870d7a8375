import { titleAhead } from "../../core/seasons/season-ahead.ts";
import type { NextSeasonChoices } from "../../core/seasons/season-choices.ts";
import { DayField } from "../form/DayField.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import * as texts from "./words.ts";

interface NextSeasonTitleProps {
  readonly choices: NextSeasonChoices;
  readonly onSet: (change: Partial<NextSeasonChoices>) => null;
}

/** Title of the plan, name and days of its season. A title that bears the season's name follows it. */
export function NextSeasonTitle({ choices: { title, season }, onSet }: NextSeasonTitleProps) {
  const rename = (text: string) => {
    const name = text.trim();
    const problem = nameProblem(text, { isNeeded: texts.seasonNeedsName });
    if (problem !== null) return problem;
    const renamed = { ...season, name };
    const isNamed = title.includes(season.name);
    return onSet({
      season: renamed,
      ...(isNamed ? { title: titleAhead(title, season, renamed) } : {}),
    });
  };
  return (
    <>
      <TextField
        label={texts.titleField}
        value={title}
        isWide
        onApply={(text) =>
          nameProblem(text, { isNeeded: texts.planNeedsTitle }) ?? onSet({ title: text.trim() })
        }
      />
      <TextField label={texts.seasonField} value={season.name} onApply={rename} />
      <DayField
        label={texts.firstDay}
        value={season.first}
        onApply={(first) =>
          first === undefined ? texts.seasonNeedsFirst : onSet({ season: { ...season, first } })
        }
      />
      <DayField
        label={texts.lastDay}
        value={season.last}
        onApply={(last) =>
          last === undefined ? texts.seasonNeedsLast : onSet({ season: { ...season, last } })
        }
      />
    </>
  );
}
