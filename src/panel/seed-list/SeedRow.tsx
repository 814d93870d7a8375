import { memo } from "react";
import type { Hatch } from "../../core/page/hatch.ts";
import { withLoaded } from "../commands/command.ts";
import { HatchSwatch } from "../state/HatchSwatch.tsx";
import { viewNow } from "../state/view-state.ts";
import { windowNow } from "../state/plan-actions.ts";
import { placeDialog, varietyDialog } from "./commands.ts";
import type { SeedListRow } from "./seed-list-rows.ts";
import * as texts from "./words.ts";

type SeedRowProps = Pick<SeedListRow, "kindText" | "placedText" | "isShort" | "hasLots"> & {
  readonly id: string;
  readonly name: string;
  /** Ids with spaces between: a row is drawn anew only when its text changes. */
  readonly plantingIds: string;
  /** Why it is grown out this season; empty: not said. */
  readonly reason: string;
  readonly hatch: Hatch | undefined;
  readonly isChosen: boolean;
  readonly onChoose: (id: string | null) => void;
};

/** One variety in two short lines; what can be done with it shows once it is chosen or pointed at. */
export const SeedRow = memo(function SeedRow(props: SeedRowProps) {
  const { id, name, kindText, placedText, isShort, plantingIds, reason, isChosen } = props;
  const ids = plantingIds === "" ? [] : plantingIds.split(" ");
  const choose = () => {
    props.onChoose(isChosen ? null : id);
    if (!isChosen && ids.length > 0) windowNow().select(ids);
  };
  const showPlantings = () => {
    windowNow().select(ids);
    windowNow().bringIntoView(ids);
    viewNow().showSheet();
  };
  return (
    <li
      className="seed-row"
      draggable
      data-row
      data-variety={id}
      data-chosen={isChosen ? "true" : undefined}
    >
      <HatchSwatch hatch={props.hatch} />
      <button
        type="button"
        className="seed-open"
        data-stop
        aria-expanded={isChosen}
        onClick={choose}
      >
        <span className="seed-line">
          <bdi className="seed-name">{name}</bdi>
          <span className={isShort ? "seed-placed short" : "seed-placed"}>{placedText}</span>
        </span>
        <span className="seed-kind">
          {kindText}
          {reason !== "" && <em className="seed-reason"> {reason}</em>}
        </span>
      </button>
      <SeedActions
        {...{ id, name, hasLots: props.hasLots }}
        onShow={ids.length > 0 ? showPlantings : null}
      />
    </li>
  );
});

interface SeedActionsProps {
  readonly id: string;
  readonly name: string;
  readonly hasLots: boolean;
  /** Null where nothing is placed that could be shown. */
  readonly onShow: (() => void) | null;
}

function SeedActions({ id, name, hasLots, onShow }: SeedActionsProps) {
  return (
    <div className="seed-actions">
      <ActionLink
        name={texts.place}
        about={texts.placeInABed(name)}
        onPress={() => placeDialog.open({ varietyId: id, bedId: null })}
      />
      {onShow && (
        <ActionLink name={texts.show} about={texts.showPlantingsOf(name)} onPress={onShow} />
      )}
      {hasLots && (
        <ActionLink
          name={texts.line}
          about={texts.lineThroughYears(name)}
          onPress={() => openLine(id)}
        />
      )}
      <ActionLink
        name={texts.edit}
        about={texts.editName(name)}
        onPress={() => varietyDialog.open({ id })}
      />
    </div>
  );
}

function openLine(varietyId: string): void {
  void withLoaded(
    () => import("../generations/dialogs.ts"),
    ({ lineDialog }) => lineDialog.open({ varietyId, lotId: null }),
  );
}

interface ActionLinkProps {
  readonly name: string;
  /** What a screen reader hears. */
  readonly about: string;
  readonly onPress: () => void;
}

function ActionLink({ name, about, onPress }: ActionLinkProps) {
  return (
    <button type="button" className="link" data-stop aria-label={about} onClick={onPress}>
      {name}
    </button>
  );
}
