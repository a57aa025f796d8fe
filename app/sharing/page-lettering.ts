/**
 * The page's lettering as a style sheet that needs no other file. A drawing that is turned into dots is a document of its
 * own, which asks for nothing: its letters have to be in it. Empty where they cannot be had; the faces of the device then
 * letter it.
 */
export async function pageLettering(): Promise<string> {
  try {
    return (await Promise.all(fontRules().map(carriedAlong))).join("\n");
  } catch {
    return "";
  }
}

const isFontRule = (rule: CSSRule): rule is CSSFontFaceRule => rule instanceof CSSFontFaceRule;
const fontRules = (): CSSFontFaceRule[] =>
  [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules].filter(isFontRule));

/** A rule with its font in it. One that was built in is so already. */
async function carriedAlong(rule: CSSFontFaceRule): Promise<string> {
  const [whole, , address] = /url\((["']?)(.*?)\1\)/.exec(rule.cssText) ?? [];
  if (!whole || !address || address.startsWith("data:")) return rule.cssText;
  const font = await fetch(new URL(address, rule.parentStyleSheet?.href ?? document.baseURI));
  if (!font.ok) throw new Error(`${font.status} for a font`);
  return rule.cssText.replace(whole, `url("${await asDataUrl(await font.blob())}")`);
}

const asDataUrl = (blob: Blob): Promise<string> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(blob);
  });
