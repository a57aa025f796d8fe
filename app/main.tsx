import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./App.tsx";
import { boot } from "./boot.ts";
import { startBoard } from "./device/board.ts";
import { startLanguage } from "./language/start-language.ts";
import { openLink } from "./sharing/open-link.ts";
import "./style/lettering.css";
import "./style/tokens.css";
import "./style/base.css";
import "./style/controls.css";
import "./style/frame.css";
import "./style/topbar.css";
import "./style/coming.css";
import "./style/ledger.css";
import "./style/card.css";
import "./style/takeoff.css";
import "./style/dialogs.css";
import "./style/wishes.css";

const root = document.getElementById("root");
if (!root) throw new Error("index.html has lost its root");

// Sent for before anything waits: it arrives while the kept garden is read and the shell is painted.
void import("./plan/Plan.tsx");
void import("./barrow/Barrow.tsx");

startBoard();
await startLanguage();
await boot();
await openLink(window);
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
