import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "@playwright/test";

/** A browser of its own process group with a profile on disk, so that it can be killed as a crash or a power cut would. */
export interface KillableBrowser {
  readonly page: Page;
  /** Kills every process of it at once; nothing is written, said or closed any more. */
  kill(): Promise<void>;
}

export async function startKillable(
  executable: string,
  args: readonly string[],
  profile: string,
): Promise<KillableBrowser> {
  const portFile = join(profile, "DevToolsActivePort");
  rmSync(portFile, { force: true });
  // What a killed browser leaves behind: it would take the profile to be in use.
  rmSync(join(profile, "SingletonLock"), { force: true });
  const own = [
    ...args,
    "--headless=new",
    "--remote-debugging-port=0",
    "--hide-crash-restore-bubble",
    "--window-size=1280,800",
    `--user-data-dir=${profile}`,
    "about:blank",
  ];
  const process_ = spawn(executable, own, { detached: true, stdio: "ignore" });
  const browser = await connected(portFile);
  const [context] = browser.contexts();
  if (!context) throw new Error("the browser has no profile open");
  const page = context.pages()[0] ?? (await context.newPage());
  return {
    page,
    async kill() {
      await killGroup(process_);
      await browser.close().catch(() => undefined);
    },
  };
}

async function connected(portFile: string): Promise<Browser> {
  for (let i = 0; i < 200; i++) {
    const [port] = existsSync(portFile) ? readFileSync(portFile, "utf8").split("\n") : [];
    if (port) return chromium.connectOverCDP(`http://127.0.0.1:${port}`);
    await new Promise((goOn) => setTimeout(goOn, 50));
  }
  throw new Error("the browser did not start");
}

function killGroup(process_: ChildProcess): Promise<void> {
  const { pid } = process_;
  if (pid === undefined) throw new Error("the browser has no process");
  return new Promise((resolve) => {
    process_.once("exit", () => resolve());
    process.kill(-pid, "SIGKILL");
  });
}
