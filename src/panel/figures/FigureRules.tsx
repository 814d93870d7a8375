import { cautions } from "../../core/kinds/caution-words.ts";
import { levelTable } from "../../core/kinds/levels.ts";
import { defaultRule } from "../../core/distances/default-rule-words.ts";
import { choicesOf, levelWords } from "../state/plan-words.ts";
import * as texts from "./words.ts";
import { Sentence } from "../state/Sentence.tsx";

/** How a distance is chosen, for every kind alike. */
export function FigureRules() {
  return (
    <>
      <p>
        <Sentence
          words={texts.howFarTrusted}
          parts={{
            seen: <i>{texts.seen}</i>,
            practice: <i>{texts.commonPractice}</i>,
            memory: <i>{texts.fromMemory}</i>,
            own: <i>{texts.ownFigure}</i>,
          }}
        />
      </p>
      <section>
        <h4>{texts.theRule}</h4>
        <p>{texts.seedParentDecides}</p>
        <ol className="figure-notes">
          {defaultRule.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </section>
      <section>
        <h4>{texts.classesAndPurityLevels}</h4>
        <ul className="figure-notes">
          {choicesOf(levelWords).map(({ value, label }) => (
            <li key={value}>{label}</li>
          ))}
        </ul>
        <LevelTable />
      </section>
      <section>
        <h4>{texts.cautionsForEveryKind}</h4>
        <ul className="figure-notes">
          {cautions
            .filter(({ id }) => id === "treated-seed" || id === "seed-law")
            .map(({ id, title, text }) => (
              <li key={id}>
                <b>{title}.</b> {text}
              </li>
            ))}
        </ul>
      </section>
    </>
  );
}

/** Own figures are of the level they were typed for; only published classes need a table. */
function LevelTable() {
  return (
    <table className="figure-table">
      <thead>
        <tr>
          <th scope="col">{texts.classWord}</th>
          <th scope="col">{texts.readAs}</th>
          <th scope="col">{texts.why}</th>
        </tr>
      </thead>
      <tbody>
        {levelTable
          .filter(({ figureClass }) => !figureClass.startsWith("own "))
          .map(({ figureClass, name, level, why }) => (
            <tr key={figureClass}>
              <td>{name}</td>
              <td>{level}</td>
              <td>{why}</td>
            </tr>
          ))}
      </tbody>
    </table>
  );
}
