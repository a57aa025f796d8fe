import { type Garden, language, say, writeGarden } from "../../src/index.ts";

/**
 * A garden in a link: deflated (RFC 1951), in base64url (RFC 4648), after the `#`, which no browser sends anywhere.
 * The link is the garden: whoever has it has a copy, and nothing is kept for it elsewhere.
 */
const KEY = "garden=";

/** Letters. Longer links are cut short by mail and message programs (common practice). */
export const LONGEST_LINK = 16_000;
/** No garden file is larger; what unpacks to more is no garden. */
const LARGEST_TEXT = 5_000_000;

/** A link that cannot be made or read. `message` is a sentence for whoever holds it. */
export class ShareLinkError extends Error {
  override readonly name = "ShareLinkError";
}

/**
 * @param page address of the planner, without what follows `#`
 * @throws ShareLinkError where the garden is too large for a link
 */
export async function linkTo(garden: Garden, page: string): Promise<string> {
  // A picture beneath the plan has no room in a link.
  const text = JSON.stringify(JSON.parse(writeGarden({ ...garden, underlay: null })));
  const packed = await through(
    new CompressionStream("deflate-raw"),
    new TextEncoder().encode(text),
    Infinity,
  );
  const link = `${page}#${KEY}${base64url(packed)}`;
  if (link.length > LONGEST_LINK) {
    throw new ShareLinkError(
      say`This garden is too large for a link: it would be ${thousands(link.length)} letters long, and many programs cut links after ${thousands(LONGEST_LINK)}. Save it to a file and send that.`,
    );
  }
  return link;
}

/** Whether the part after `#` holds a garden. */
export const holdsGarden = (hash: string): boolean => hash.startsWith(`#${KEY}`);

/**
 * The text of the garden file in a link: still to be read and checked like any file.
 * @throws ShareLinkError for a link that has been cut short or mistyped
 */
export async function textInLink(hash: string): Promise<string> {
  const code = hash.slice(KEY.length + 1);
  if (code.length > LONGEST_LINK || !/^[A-Za-z0-9_-]+$/.test(code)) throw broken();
  try {
    const unpacked = await through(new DecompressionStream("deflate-raw"), bytesOf(code), LARGEST_TEXT);
    return new TextDecoder("utf-8", { fatal: true }).decode(unpacked);
  } catch (cause) {
    throw broken({ cause });
  }
}

const broken = (options?: ErrorOptions) =>
  new ShareLinkError(
    say`The garden in this link cannot be read: the link was cut short or changed on its way.`,
    options,
  );

const thousands = (count: number): string => count.toLocaleString(language());

/** @throws RangeError once more than `most` bytes have come out */
async function through(
  stream: CompressionStream | DecompressionStream,
  bytes: Uint8Array<ArrayBuffer>,
  most: number,
): Promise<Uint8Array> {
  const writer = stream.writable.getWriter();
  // A broken stream fails on both ends; the reading end tells.
  const written = writer.write(bytes).then(() => writer.close());
  written.catch(() => undefined);
  const parts: Uint8Array[] = [];
  let length = 0;
  const reader = stream.readable.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel();
      throw new RangeError(`more than ${most} bytes`);
    }
    parts.push(value);
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

function base64url(bytes: Uint8Array): string {
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

const bytesOf = (code: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(code.replaceAll("-", "+").replaceAll("_", "/")), (letter) => letter.charCodeAt(0));
