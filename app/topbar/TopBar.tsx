import { useEditor } from "../store/use-editor.ts";

export function TopBar() {
  const name = useEditor((s) => s.garden.name);
  return (
    <header className="topbar">
      <h1 className="wordmark">
        Bed<span>w</span>right
      </h1>
      <p>{name}</p>
    </header>
  );
}
