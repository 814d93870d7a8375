import { Component, type ReactNode } from "react";
import { note } from "../../store/keeping/diagnostics.ts";
import { downloadPlan } from "../../store/files/download-plan.ts";
import { reloadPage } from "../../store/keeping/program-update.ts";
import { Dialog } from "../form/Dialog.tsx";
import { isPartMissing } from "./part-missing.ts";
import * as texts from "./words.ts";

interface RegionBoundaryProps {
  /** What is said where it cannot be shown. */
  readonly title: string;
  readonly children: ReactNode;
  /** For what can be put away, such as a dialog: how. */
  readonly onClose?: () => void;
}

interface RegionBoundaryState {
  readonly fault: string | null;
}

/** A fault in one region leaves the others working and the plan within reach. */
export class RegionBoundary extends Component<RegionBoundaryProps, RegionBoundaryState> {
  override state: RegionBoundaryState = { fault: null };

  static getDerivedStateFromError(error: unknown): RegionBoundaryState {
    return { fault: error instanceof Error ? error.message : String(error) };
  }

  override componentDidCatch(error: unknown): void {
    note("program", `${this.props.title}: ${String(error)}`);
  }

  override render() {
    const { title, children, onClose } = this.props;
    const { fault } = this.state;
    if (fault === null) return children;
    const explanation = (
      <Explanation fault={fault} onRetry={() => this.setState({ fault: null })} />
    );
    if (onClose) {
      return (
        <Dialog title={title} onClose={onClose}>
          {explanation}
        </Dialog>
      );
    }
    return (
      <section className="region fault">
        <h2>{title}</h2>
        {explanation}
      </section>
    );
  }
}

interface ExplanationProps {
  readonly fault: string;
  readonly onRetry: () => void;
}

function Explanation({ fault, onRetry }: ExplanationProps) {
  const isMissing = isPartMissing(fault);
  return (
    <div role="alert">
      <p>{isMissing ? texts.partNotFetched : texts.somethingWentWrong(fault)}</p>
      <p className="dialog-actions">
        <button type="button" className="primary" onClick={() => void downloadPlan()}>
          {texts.downloadThePlan}
        </button>
        {!isMissing && (
          <button type="button" onClick={onRetry}>
            {texts.tryAgain}
          </button>
        )}
        <button type="button" onClick={() => void reloadPage()}>
          {texts.loadThePageAnew}
        </button>
      </p>
    </div>
  );
}
