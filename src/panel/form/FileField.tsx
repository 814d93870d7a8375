import { useId } from "react";
import { type Problem, problemText } from "../../core/model/problem.ts";

interface FileFieldProps {
  readonly label: string;
  /** Names and media types of the files offered. */
  readonly accept: string;
  /** Id of the words that explain it. */
  readonly describedBy?: string | undefined;
  readonly onPick: (file: File) => void;
}

/** One file from the disk. The same file, mended in the meantime, can be picked again. */
export function FileField({ label, accept, describedBy, onPick }: FileFieldProps) {
  const id = useId();
  return (
    <>
      <label htmlFor={id}>{label}</label>{" "}
      <input
        id={id}
        type="file"
        accept={accept}
        aria-describedby={describedBy}
        onClick={(event) => {
          event.currentTarget.value = "";
        }}
        onChange={(event) => {
          const picked = event.target.files?.[0];
          if (picked) onPick(picked);
        }}
      />
    </>
  );
}

/** Everything that is wrong with the file picked. */
export function FileProblems({ problems }: { readonly problems: readonly Problem[] }) {
  return (
    <ul className="field-reason" role="alert">
      {problems.map((problem) => (
        <li key={problemText(problem)}>{problemText(problem)}</li>
      ))}
    </ul>
  );
}
