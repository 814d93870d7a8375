import { useEffect, useId, useState } from "react";
import { type KeptFace, keepFace, keptFace } from "../../store/files/extra-face.ts";
import { askPaper } from "../state/ask-paper.ts";
import { FileField } from "../form/FileField.tsx";
import { faceWords } from "./paper-words.ts";

interface FaceFieldsProps {
  /** Told when another face is in use, or none any more. */
  readonly onChange: () => void;
}

/** A face of the grower's own for names in other scripts; tried before it is kept. */
export function FaceFields({ onChange }: FaceFieldsProps) {
  const [face, setFace] = useState<KeptFace | null>(null);
  const [said, setSaid] = useState("");
  const hintId = useId();
  useEffect(() => {
    void keptFace().then(setFace);
  }, []);
  const take = async (file: File) => {
    setSaid(faceWords.trying);
    const { face: taken, problem, remarks } = await tried(file);
    setSaid(problem === "" ? remarks.map((words) => `${words}.`).join(" ") : problem);
    if (!taken) return;
    setFace(taken);
    onChange();
  };
  const remove = async () => {
    await keepFace(null);
    setFace(null);
    setSaid("");
    onChange();
  };
  return (
    <details>
      <summary>{faceWords.legend}</summary>
      <p className="field-hint" id={hintId}>
        {faceWords.hint}
      </p>
      <p>
        <FileField
          label={faceWords.label}
          accept=".ttf,.otf,font/ttf,font/otf"
          describedBy={hintId}
          onPick={(file) => void take(file)}
        />
      </p>
      {face && (
        <p className="dialog-actions">
          <span>{faceWords.kept(face.name)}</span>
          <button type="button" onClick={() => void remove()}>
            {faceWords.remove}
          </button>
        </p>
      )}
      <p role="status" className={said === faceWords.trying ? "field-hint" : "field-reason"}>
        {said}
      </p>
    </details>
  );
}

interface TriedFace {
  /** Null when it was not taken. */
  readonly face: KeptFace | null;
  readonly problem: string;
  /** What it still has no letters for. */
  readonly remarks: readonly string[];
}

/** A face is kept only after words were set with it. */
async function tried(file: File): Promise<TriedFace> {
  const refused = (reason: string): TriedFace => ({
    face: null,
    problem: faceWords.refused(file.name, reason),
    remarks: [],
  });
  let bytes: Uint8Array<ArrayBuffer>;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return refused(faceWords.unread);
  }
  try {
    const made = await askPaper({ what: "face", bytes }, { followsReading: false });
    const face = { name: file.name, bytes };
    try {
      await keepFace(face);
    } catch {
      return refused(faceWords.unkept);
    }
    return { face, problem: "", remarks: made?.remarks ?? [] };
  } catch (fault) {
    return refused(fault instanceof Error ? fault.message : String(fault));
  }
}
