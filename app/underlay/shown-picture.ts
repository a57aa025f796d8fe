import { useEffect } from "react";
import { create } from "zustand";

export type ShownPicture =
  | { readonly state: "none" | "loading" | "missing"; readonly picture: string | null; readonly image: null }
  | { readonly state: "shown"; readonly picture: string; readonly image: ImageBitmap };

/** The picture beneath the plan, decoded. */
export const useShownPicture = create<ShownPicture>()(() => ({ state: "none", picture: null, image: null }));

/** Has the picture decoded whenever it becomes another one. What cannot be had is missing, and said so under Site. */
export function useLoadedPicture(picture: string | null): void {
  useEffect(() => {
    void load(picture);
  }, [picture]);
}

/** Also after it has been put by again. */
export async function load(picture: string | null): Promise<void> {
  useShownPicture.setState({ state: picture === null ? "none" : "loading", picture, image: null }, true);
  if (picture === null) return;
  const image = await decoded(picture);
  // Another may have been asked for meanwhile.
  const now = useShownPicture.getState();
  if (now.picture !== picture || now.state !== "loading") return;
  useShownPicture.setState(
    image ? { state: "shown", picture, image } : { state: "missing", picture, image: null },
    true,
  );
}

async function decoded(picture: string): Promise<ImageBitmap | null> {
  const { pagePictures } = await import("./page-pictures.ts");
  const blob = await pagePictures().blobOf(picture);
  if (!blob) return null;
  try {
    return await createImageBitmap(blob);
  } catch {
    return null;
  }
}
