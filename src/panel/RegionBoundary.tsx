import { Component, type ReactNode } from "react";
import { downloadPlan } from "../store/plan-file.ts";

interface RegionBoundaryProps {
  /** What the region is called in the message. */
  readonly name: string;
  readonly children: ReactNode;
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

  override render() {
    const { name, children } = this.props;
    const { fault } = this.state;
    if (fault === null) return children;
    return (
      <section className="region fault" role="alert">
        <h2>{name} cannot be shown</h2>
        <p>
          Something here went wrong ({fault}). The plan itself is not touched: keep a copy of it,
          then try again or load the page anew.
        </p>
        <p className="dialog-actions">
          <button type="button" className="primary" onClick={downloadPlan}>
            Download the plan
          </button>
          <button type="button" onClick={() => this.setState({ fault: null })}>
            Try again
          </button>
        </p>
      </section>
    );
  }
}
