import type { EstimateWords } from "../../core/crossing-share/estimate-words.ts";
import {
  CROSSING_CAUTION,
  barMarks,
  placeOnBar,
  rarityRange,
} from "../../core/crossing-share/share-words.ts";
import type { Shares } from "../../core/crossing-share/distance-bins.ts";
import * as texts from "./dialog-words.ts";
import "./crossing-share.css";

interface EstimateLinesProps {
  readonly words: EstimateWords;
  /** False where the caution stands close by already. */
  readonly hasCaution?: boolean;
}

/** An estimate: the rule's verdict, the range and its bar, what it rests on, and the caution. */
export function EstimateLines({ words, hasCaution = true }: EstimateLinesProps) {
  return (
    <div className="estimate">
      <p>{words.verdict}</p>
      <p className="estimate-range">{words.headline}</p>
      {words.shares && <ShareBar shares={words.shares} />}
      {words.sentences.length > 0 && (
        <ul className="plain-list">
          {words.sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      {hasCaution && <p className="soft">{CROSSING_CAUTION}</p>}
    </div>
  );
}

const WIDTH = 100;

/** The range on a logarithmic scale, in ink: more or less, never good or bad. */
function ShareBar({ shares }: { readonly shares: Shares }) {
  const [from, to] = shares.map((share) => WIDTH * placeOnBar(share));
  const left = Math.min(from ?? 0, WIDTH - 1);
  return (
    <div className="share-bar" role="img" aria-label={texts.ofAllSeeds(rarityRange(shares))}>
      <svg viewBox={`0 0 ${WIDTH} 6`} preserveAspectRatio="none" aria-hidden="true">
        <line className="share-axis" x1="0" x2={WIDTH} y1="3" y2="3" />
        {barMarks().map(({ share }) => {
          const x = WIDTH * placeOnBar(share);
          return <line key={share} className="share-axis" x1={x} x2={x} y1="1" y2="5" />;
        })}
        <rect
          className="share-range"
          x={left}
          width={Math.max(1, (to ?? 0) - left)}
          y="1.5"
          height="3"
        />
      </svg>
      {barMarks()
        .filter((_, index) => index % 2 === 1)
        .map(({ share, words }) => (
          <span key={share} aria-hidden="true" style={{ left: `${WIDTH * placeOnBar(share)}%` }}>
            {words}
          </span>
        ))}
    </div>
  );
}
