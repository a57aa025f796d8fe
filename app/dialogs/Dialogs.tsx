import { type ComponentType, lazy, Suspense } from "react";
import { type DialogName, useDialog } from "./open-dialog.ts";

const SHOWN: Readonly<Record<DialogName, ComponentType>> = {
  climate: lazy(async () => ({ default: (await import("../climate/ClimateDialog.tsx")).ClimateDialog })),
  gardens: lazy(async () => ({ default: (await import("./GardensDialog.tsx")).GardensDialog })),
  help: lazy(async () => ({ default: (await import("./HelpDialog.tsx")).HelpDialog })),
  outline: lazy(async () => ({ default: (await import("../measuring/OutlineDialog.tsx")).OutlineDialog })),
  parcels: lazy(async () => ({ default: (await import("../parcels/ParcelsDialog.tsx")).ParcelsDialog })),
  rules: lazy(async () => ({ default: (await import("../help/RulesDialog.tsx")).RulesDialog })),
  "take-along": lazy(async () => ({
    default: (await import("../sharing/TakeAlongDialog.tsx")).TakeAlongDialog,
  })),
  underlay: lazy(async () => ({ default: (await import("../underlay/ScaleDialog.tsx")).ScaleDialog })),
  tape: lazy(async () => ({ default: (await import("../measuring/TapeDialog.tsx")).TapeDialog })),
};

/** The dialog that is open, loaded when it is first asked for. */
export function Dialogs() {
  const open = useDialog((s) => s.open);
  if (!open) return null;
  const Shown = SHOWN[open];
  return (
    <Suspense fallback={null}>
      <Shown />
    </Suspense>
  );
}
