import { useEditor } from "../store/use-editor.ts";

/** Leaves that have nothing to show yet say so, and what to do meanwhile. */
export const SunLeaf = () => (
  <div className="leaf-text">
    <h3>Sun is not worked out in this version</h3>
    <p>
      What to look for on the ground: vegetables want 6 to 8 hours of direct sun a day, and split hours add
      up. On a clear day in spring, note each hour which beds are lit and which lie in the shade of house,
      fence or tree.
    </p>
    <p>
      North and the place can be given <ToSite />: they are kept for when it is.
    </p>
  </div>
);

export const YearRoundLeaf = () => (
  <div className="leaf-text">
    <h3>The year’s work is not worked out in this version</h3>
    <p>
      What it comes to: top the beds up by 2 to 3 in (5 to 8 cm) once or twice a year, keep them mulched, sow
      a cover crop or cover them for winter, and test new compost or manure on a pot of beans before it goes
      on.
    </p>
    <p>
      Winter and frost dates can be given <ToSite />: they are kept for when it is.
    </p>
  </div>
);

const ToSite = () => (
  <button type="button" className="link" onClick={() => useEditor.getState().turnTo("site")}>
    under Site
  </button>
);
