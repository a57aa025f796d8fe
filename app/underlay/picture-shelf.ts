/** A picture that lies beneath the plan of some garden. */
export interface KeptPicture {
  /** SHA-256 of its bytes. */
  readonly picture: string;
  readonly blob: Blob;
  /** When it was last put here, milliseconds since 1970. */
  readonly at: number;
}

/** Where pictures are put, each once, whichever gardens use it. Everything may throw. */
export interface PictureShelf {
  get(picture: string): Promise<KeptPicture | undefined>;
  put(picture: KeptPicture): Promise<unknown>;
  /** All there are, without their bytes. */
  list(): Promise<readonly Omit<KeptPicture, "blob">[]>;
  remove(picture: string): Promise<unknown>;
}
