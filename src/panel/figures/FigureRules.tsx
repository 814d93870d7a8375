import { cautions } from "../../core/kinds/cautions.ts";
import { levelTable } from "../../core/kinds/levels.ts";
import { defaultRule } from "../../core/distances/required-distance.ts";
import { choicesOf, levelWords } from "../state/plan-words.ts";

/** How a distance is chosen, for every kind alike. */
export function FigureRules() {
  return (
    <>
      <p>
        Regulations assume fields and give minima: they are no upper bound of safety for a garden
        bed. Every number names its source and how far it is trusted: <i>seen</i> (read in the
        source named), <i>common practice</i> (what the trade does, nothing published),{" "}
        <i>from memory</i> (recalled, not checked) or <i>own figure</i> (typed for this plan). What
        is not listed was not found, and the checks say unknown.
      </p>
      <section>
        <h4>The rule</h4>
        <p>The seed parent decides. Its distance is found by these steps:</p>
        <ol className="figure-notes">
          {defaultRule.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </section>
      <section>
        <h4>Classes and purity levels</h4>
        <ul className="figure-notes">
          {choicesOf(levelWords).map(({ value, label }) => (
            <li key={value}>{label}</li>
          ))}
        </ul>
        <LevelTable />
      </section>
      <section>
        <h4>Cautions for every kind</h4>
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
          <th scope="col">Class</th>
          <th scope="col">Read as</th>
          <th scope="col">Why</th>
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
