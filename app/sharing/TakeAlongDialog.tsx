import { type ReactNode, useState } from "react";
import { type Garden, language, plainText, say, takeoff } from "../../src/index.ts";
import { Dialog } from "../dialogs/Dialog.tsx";
import { offerFile } from "../keeping/file.ts";
import { pageGardens } from "../keeping/page-gardens.ts";
import { saveCsv } from "../ledger/takeoff/save-csv.ts";
import { useEditor } from "../store/use-editor.ts";
import { fileNameOf } from "./file-name.ts";
import { PictureError, pngOf, RESOLUTIONS, type Resolution } from "./png.ts";
import { linkTo, ShareLinkError } from "./share-link.ts";
import "./sharing.css";

/** Ways out of the planner: a link, and files for other programs. */
export function TakeAlongDialog() {
  const garden = useEditor((s) => s.garden);
  const name = plainText(garden.name);
  return (
    <Dialog title={name ? say`Take ${name} along` : say`Take the garden along`}>
      <LinkSection garden={garden} />
      <FileSection garden={garden} />
    </Dialog>
  );
}

function FileSection({ garden }: { readonly garden: Garden }) {
  const [resolution, setResolution] = useState<Resolution>(150);
  const [problem, setProblem] = useState<string | null>(null);

  const save = async (ending: string, make: () => Promise<string | Blob>, type: string) => {
    setProblem(null);
    try {
      offerFile(fileNameOf(garden.name, ending), await make(), type);
    } catch (error) {
      if (!(error instanceof PictureError)) throw error;
      setProblem(error.message);
    }
  };

  // What makes the files is loaded when somebody wants one.
  const picture = async () => (await import("./plan-picture.ts")).pictureOf(garden);

  return (
    <section aria-label={say`As a file`}>
      <h3>{say`As a file`}</h3>
      {problem ? (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      ) : null}
      <FileRow
        label={say`Garden file`}
        note={
          garden.underlay
            ? say`Everything, with the picture beneath the plan, to open here again on this or another device.`
            : say`Everything, to open here again on this or another device.`
        }
        onSave={() => void pageGardens().saveToFile()}
      />
      <FileRow
        label={say`Drawing (DXF)`}
        note={say`The plan in millimetres, a layer for each kind of thing, for programs that draw.`}
        onSave={() => save("dxf", async () => (await import("./dxf.ts")).dxfOf(garden), "image/vnd.dxf")}
      />
      <FileRow
        label={say`Picture (SVG)`}
        note={say`The plan true to scale, to print at any size or to work on in a drawing program.`}
        onSave={() => save("svg", async () => (await picture()).svg, "image/svg+xml")}
      />
      <FileRow
        label={say`Picture (PNG)`}
        note={say`The plan in dots, for a letter, a post or a message.`}
        onSave={() => save("png", async () => pngOf(await picture(), resolution), "image/png")}
      >
        <select
          aria-label={say`Dots to the inch`}
          className="file-choice"
          value={resolution}
          onChange={(event) => {
            const chosen = RESOLUTIONS.find((one) => one === Number(event.target.value));
            if (chosen) setResolution(chosen);
          }}
        >
          {RESOLUTIONS.map((one) => (
            <option key={one} value={one}>
              {say`${one} dots to the inch`}
            </option>
          ))}
        </select>
      </FileRow>
      <FileRow
        label={say`Shopping list (CSV)`}
        note={say`The takeoff with its prices, for a spreadsheet.`}
        onSave={() => saveCsv(takeoff(garden), garden)}
      />
      <p className="quiet">{say`For paper or PDF press Build sheet and print it.`}</p>
    </section>
  );
}

interface FileRowProps {
  readonly label: string;
  readonly note: string;
  readonly onSave: () => void;
  /** What is chosen about it before it is saved. */
  readonly children?: ReactNode;
}

const FileRow = ({ label, note, onSave, children }: FileRowProps) => (
  <div className="kept-row">
    <div>
      <strong>{label}</strong>
      <span className="quiet">{note}</span>
    </div>
    <div className="button-row">
      {children}
      <button type="button" className="button" aria-label={say`Save as ${label}`} onClick={onSave}>
        {say`Save`}
      </button>
    </div>
  </div>
);

type Made = { readonly link: string } | { readonly problem: string } | null;

function LinkSection({ garden }: { readonly garden: Garden }) {
  const [made, setMade] = useState<Made>(null);
  const [copied, setCopied] = useState(false);

  const make = async () => {
    const { origin, pathname } = window.location;
    try {
      const link = await linkTo(garden, origin + pathname);
      setMade({ link });
      setCopied(await copy(link));
    } catch (error) {
      if (!(error instanceof ShareLinkError)) throw error;
      setMade({ problem: error.message });
    }
  };

  return (
    <section aria-label={say`As a link`}>
      <h3>{say`As a link`}</h3>
      <p>
        {say`The whole garden is in the link itself, names and prices too. Whoever opens it gets a copy; nothing is sent anywhere until you send the link.`}
        {garden.underlay
          ? ` ${say`The picture beneath the plan is not in it; a garden file takes it along.`}`
          : ""}
      </p>
      <p className="dialog-actions">
        <button type="button" className="button main" onClick={make}>
          {say`Make a link`}
        </button>
      </p>
      {made && "problem" in made ? (
        <p className="field-problem" role="alert">
          {made.problem}
        </p>
      ) : null}
      {made && "link" in made ? (
        <div className="field">
          <label htmlFor="garden-link">{copied ? say`Copied: the link` : say`The link, to be copied`}</label>
          <span className="field-box">
            <input
              id="garden-link"
              type="text"
              readOnly
              value={made.link}
              onFocus={(event) => event.currentTarget.select()}
            />
          </span>
          <p className="field-note" role="status">
            {say`${made.link.length.toLocaleString(language())} letters long.`}
          </p>
        </div>
      ) : null}
    </section>
  );
}

/** A browser may refuse; the link then stands there to be copied by hand. */
async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
