import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

/** Every text in the sources: those that are said, and those that stand bare. */

const root = fileURLToPath(new URL("../..", import.meta.url));

export interface SourceText {
  readonly file: string;
  readonly line: number;
  readonly text: string;
}

export interface FileTexts {
  /** Keys that must stand in a catalogue. */
  readonly said: readonly SourceText[];
  /** Keys of counted texts: each has as many entries as the language has forms. */
  readonly counted: readonly SourceText[];
  /** Texts with words for people that nothing says. */
  readonly bare: readonly SourceText[];
  /** Texts said when the module is read, before it is known who speaks. */
  readonly early: readonly SourceText[];
}

export function sourceFiles(...folders: readonly string[]): readonly string[] {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
      .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join("/")),
  );
}

export function textsOf(file: string, source = readFileSync(join(root, file), "utf8")): FileTexts {
  const tree = ts.createSourceFile(
    file,
    source,
    ts.ScriptTarget.ES2022,
    true,
    file.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS,
  );
  const [said, counted, bare, early]: [SourceText[], SourceText[], SourceText[], SourceText[]] = [
    [],
    [],
    [],
    [],
  ];
  const at = (node: ts.Node, text: string): SourceText => ({
    file,
    line: tree.getLineAndCharacterOfPosition(node.getStart()).line + 1,
    text,
  });

  const visit = (node: ts.Node, inFunction: boolean, inFault = false): void => {
    if (isLeftAlone(node)) return;
    const inside = inFunction || ts.isFunctionLike(node);
    if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === "say") {
      said.push(at(node, templateKey(node.template)));
      if (!inFunction) early.push(at(node, templateKey(node.template)));
      for (const hole of holesIn(node.template)) visit(hole, inside);
      return;
    }
    if (ts.isCallExpression(node)) {
      const [first, second] = node.arguments;
      const called = node.expression.getText();
      if ((called === "word" || called === "told") && first && ts.isStringLiteralLike(first)) {
        said.push(at(node, first.text));
        if (called === "told" && !inFunction) early.push(at(node, first.text));
        return;
      }
      if (called === "countedWord" && first && ts.isObjectLiteralExpression(first)) {
        counted.push(at(node, propertyText(first, "other") ?? ""));
        return;
      }
      if (called === "sayCount" && second && ts.isObjectLiteralExpression(second)) {
        const other = propertyText(second, "other");
        if (other === null || propertyText(second, "one") === null) bare.push(at(second, second.getText()));
        else counted.push(at(node, other));
        if (!inFunction) early.push(at(node, other ?? ""));
        if (first) visit(first, inside);
        for (const more of node.arguments.slice(2)) visit(more, inside);
        return;
      }
    }
    const shown = inFault && !isSentence(node) ? null : bareText(node);
    if (shown !== null) bare.push(at(node, shown));
    ts.forEachChild(node, (child) => visit(child, inside, inFault || isFault(node)));
  };
  visit(tree, false);
  return { said, counted, bare, early };
}

const holesIn = (template: ts.TemplateLiteral): readonly ts.Expression[] =>
  ts.isTemplateExpression(template) ? template.templateSpans.map(({ expression }) => expression) : [];

/** The English text with its holes numbered, as `say` puts it together. */
export function templateKey(template: ts.TemplateLiteral): string {
  if (ts.isNoSubstitutionTemplateLiteral(template)) return template.text;
  return template.templateSpans.reduce(
    (key, { literal }, i) => `${key}{{${i}}}${literal.text}`,
    template.head.text,
  );
}

function propertyText(object: ts.ObjectLiteralExpression, name: string): string | null {
  for (const property of object.properties) {
    if (ts.isPropertyAssignment(property) && property.name.getText() === name)
      return ts.isStringLiteralLike(property.initializer) ? property.initializer.text : null;
  }
  return null;
}

/** Attributes and fields whose text is shown or read out whatever its length. */
const SHOWN =
  /^(aria-label|aria-description|title|placeholder|alt|label|heading|summary|caption|hint|note|gist|has|words)$/;

const TWO_WORDS =
  /\p{L}{2,}[,:;.]? +(?:[^\p{L}]*\{\}[^\p{L}]*)?\p{L}{2,}|\{\}[,:;]? +\p{L}{3,}|\p{L}{3,}:? +\{\}/u;

/** The text of a node if people may read it: one with words in it that is no code. */
export function bareText(node: ts.Node): string | null {
  if (node.parent && (isProperty(node.parent, "key") || isCode(node) || isNamedByFault(node))) return null;
  if (ts.isJsxText(node)) return /\p{L}{2,}/u.test(node.text) ? node.text.trim() : null;
  const text = ts.isStringLiteralLike(node)
    ? node.text
    : ts.isTemplateExpression(node)
      ? [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join("{}")
      : null;
  if (text === null) return null;
  const { parent } = node;
  if (ts.isJsxAttribute(parent)) {
    const name = parent.name.getText();
    return SHOWN.test(name) && /\p{L}{2,}/u.test(text) ? text : null;
  }
  if (
    ts.isPropertyAssignment(parent) &&
    SHOWN.test(parent.name.getText()) &&
    /^(?:\p{Lu}|.* )/u.test(text) &&
    /\p{L}{2,}/u.test(text)
  )
    return text;
  if (isChosenInHole(node) && /\p{L}{2,}/u.test(text)) return text;
  return TWO_WORDS.test(text) ? text : null;
}

const isProperty = (node: ts.Node, name: string): boolean =>
  ts.isPropertyAssignment(node) && node.name.getText() === name;

/** A code that is asked for, stands as a key or names what is counted: `approach === "latch side"`. */
const isCode = (node: ts.Node): boolean => {
  const { parent } = node;
  if (ts.isBinaryExpression(parent)) return /^[!=]==$/.test(parent.operatorToken.getText());
  if (ts.isPropertyAssignment(parent)) return parent.name === node;
  return ts.isCallExpression(parent) && parent.expression.getText() === "counted";
};

/** Checks that name what they look at in the fault they throw. What of it may be shown is marked by `word`. */
const CHECKS = /^(within|aboveZero|atLeastZero|airTemperature)$/;

const isNamedByFault = ({ parent }: ts.Node): boolean =>
  ts.isCallExpression(parent) && CHECKS.test(parent.expression.getText());

/** One of two words chosen inside a template's hole: `${n === 1 ? "course" : "courses"}`. */
function isChosenInHole(node: ts.Node): boolean {
  if (!ts.isConditionalExpression(node.parent) || node.parent.condition === node) return false;
  let up: ts.Node = node.parent;
  while (ts.isConditionalExpression(up) || ts.isParenthesizedExpression(up)) up = up.parent;
  return ts.isTemplateSpan(up);
}

/** Names of JSX attributes that hold code. */
const CODE_ATTRIBUTES = /^(className|d|viewBox|points|transform|style|id|href|type|role|accept|media)$/;

/** What makes a source out of a citation. */
const CITATIONS = /^(published|practice|fromMemory|computed|printed|a117|iso|window.matchMedia)$/;

/** Nodes in which no text is for people: types, imports, faults of the program, codes. */
function isLeftAlone(node: ts.Node): boolean {
  if (ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return true;
  if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return true;
  if (ts.isJsxAttribute(node) && CODE_ATTRIBUTES.test(node.name.getText())) return true;
  // A citation stands as it was published.
  if (
    ts.isPropertyAssignment(node) &&
    /^(source|cite|citation|url|link|botanical)$/.test(node.name.getText())
  )
    return true;
  if (ts.isCallExpression(node) && CITATIONS.test(node.expression.getText())) return true;
  return false;
}

/** What was wrong with what somebody typed is told them in a sentence: "A price cannot be below 0." */
const isSentence = (node: ts.Node): boolean =>
  (ts.isStringLiteralLike(node) && /^\p{Lu}.*\.$/u.test(node.text)) ||
  (ts.isTemplateExpression(node) && node.templateSpans.at(-1)?.literal.text.endsWith(".") === true);

/** A fault of the program: its own text is for whoever mends it, but what is said inside is for the gardener. */
const isFault = (node: ts.Node): boolean =>
  ts.isNewExpression(node) &&
  /^(Error|RangeError|TypeError|Intl\.\w+|RegExp|URL|Worker)$/.test(node.expression.getText());
