// A plugin for esbuild that lays a mark at every branch of chosen sources: function bodies, both sides of ?:, what && || ??
// go on to, the arms of if and switch, loops. A branch that runs sets one byte of globalThis.noseroomReached, so that
// asking what a text has reached is one comparison of a few kB, in every execution.
import { readFile } from "node:fs/promises";
import ts from "typescript";

/** Branches at most; what lies beyond shares marks. */
export const MARKS = 1 << 13;

/** The text of a source with its marks, numbered on from `first`; and how many there are. */
export function withMarks(text, fileName, first) {
  const source = ts.createSourceFile(fileName, text, ts.ScriptTarget.Latest, true);
  const pieces = [];
  let count = 0;
  const mark = () => `noseroomReached[${(first + count++) % MARKS}]=1`;
  const put = (at, piece) => pieces.push({ at, piece, order: pieces.length });
  const open = (block) => put(block.getStart(source) + 1, `${mark()};`);
  const wrap = (node) => {
    put(node.getStart(source), `(${mark()},`);
    put(node.getEnd(), ")");
  };
  const arm = (node) => {
    if (node === undefined) return;
    if (ts.isBlock(node)) {
      open(node);
      return;
    }
    put(node.getStart(source), `{${mark()};`);
    put(node.getEnd(), "}");
  };
  const visit = (node) => {
    // Types hold no code, and declared names none that runs.
    if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return;
    if (ts.isFunctionLike(node) && node.body) {
      if (ts.isBlock(node.body)) open(node.body);
      else wrap(node.body);
    } else if (ts.isConditionalExpression(node)) {
      wrap(node.whenTrue);
      wrap(node.whenFalse);
    } else if (ts.isBinaryExpression(node)) {
      const { kind: sign } = node.operatorToken;
      if (
        sign === ts.SyntaxKind.AmpersandAmpersandToken ||
        sign === ts.SyntaxKind.BarBarToken ||
        sign === ts.SyntaxKind.QuestionQuestionToken
      )
        wrap(node.right);
    } else if (ts.isIfStatement(node)) {
      arm(node.thenStatement);
      arm(node.elseStatement);
    } else if (ts.isCaseOrDefaultClause(node)) {
      const [before] = node.statements;
      if (before) put(before.getStart(source), `${mark()};`);
    } else if (ts.isIterationStatement(node, false)) arm(node.statement);
    ts.forEachChild(node, visit);
  };
  visit(source);
  // At one place the outer piece opens first and closes last.
  pieces.sort(
    (a, b) => a.at - b.at || closing(b) - closing(a) || (closing(a) ? b.order - a.order : a.order - b.order),
  );
  let out = "";
  let at = 0;
  for (const { at: next, piece } of pieces) {
    out += text.slice(at, next) + piece;
    at = next;
  }
  return { text: out + text.slice(at), count };
}

function closing({ piece }) {
  return Number(piece === ")" || piece === "}");
}

/** Marks every source that matches `filter`. */
export function counted(filter) {
  let next = 0;
  return {
    name: "counted",
    setup(esbuild) {
      esbuild.onLoad({ filter }, async ({ path }) => {
        const { text, count } = withMarks(await readFile(path, "utf8"), path, next);
        next += count;
        return { contents: text, loader: path.split(".").at(-1) };
      });
    },
  };
}
