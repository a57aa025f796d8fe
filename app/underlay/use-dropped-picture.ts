import { type RefObject, useEffect } from "react";
import { say } from "../../src/index.ts";
import { choosePicture } from "./choose-picture.ts";
import { tellTrouble } from "./trouble.ts";

/** Lays a picture that is dropped on the plan beneath it. Any other file is refused, and not opened in the page's place. */
export function useDroppedPicture(plan: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const { current } = plan;
    const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false;
    const onOver = (event: DragEvent) => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      if (event.dataTransfer) event.dataTransfer.dropEffect = "copy";
    };
    const onDrop = (event: DragEvent) => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      const files = event.dataTransfer?.files;
      if (files?.length === 1 && files[0]) void choosePicture(files[0]);
      else tellTrouble(say`One picture at a time can lie beneath the plan.`);
    };
    current?.addEventListener("dragover", onOver);
    current?.addEventListener("drop", onDrop);
    return () => {
      current?.removeEventListener("dragover", onOver);
      current?.removeEventListener("drop", onDrop);
    };
  }, [plan]);
}
