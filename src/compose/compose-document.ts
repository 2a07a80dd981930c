import { failure, InternalError, success } from '../diagnostics/diagnostic.ts';
import type { Diagnostic, Result } from '../diagnostics/diagnostic.ts';
import { WordsError } from '../diagnostics/words-error.ts';
import type { DocumentKind } from '../model/codes.ts';
import type { DocumentTree } from '../model/document.ts';
import { expectedText } from '../model/tree-text.ts';
import { guardFigures } from './guard-figures.ts';
import { guardStatements } from './guard-statements.ts';
import type { DocumentTemplate, Templates } from './load-templates.ts';
import { makeFurniture } from './make-furniture.ts';
import { buildBlocks } from './markup/build-blocks.ts';
import { MarkupError } from './markup/element.ts';
import { buildView } from './view/build-view.ts';
import { createScene } from './view/scene.ts';
import type { Scene, SceneInput } from './view/scene.ts';

export interface ComposeInput extends SceneInput {
  readonly kind: DocumentKind;
  readonly templates: Templates;
}

/**
 * Makes one document of a packet in one language. Fails with what the words or the template lack, with
 * EVIDENCE_UNVERIFIED for a figure that nobody has read at its source, and with TEMPLATE_STATEMENT_MISSING for a
 * statement that its kind must make.
 */
export function composeDocument(input: ComposeInput): Result<DocumentTree> {
  const template = input.templates.documents.get(input.kind);
  if (template === undefined) throw new InternalError(`there is no template for ${input.kind}`);
  try {
    const scene = createScene({ ...input, drawings: input.templates.drawings });
    const tree = makeTree(scene, template, input.kind);
    const faults = [
      ...guardFigures(tree, input.comparison, input.evidence),
      ...guardStatements(tree, input.evidence),
      ...missingStatements(tree, scene, template),
    ];
    return faults.length > 0 ? failure(faults) : success(tree);
  } catch (error) {
    if (error instanceof WordsError) return failure([error.diagnostic]);
    if (error instanceof MarkupError) return failure([describeMarkup(error)]);
    throw error;
  }
}

function makeTree(scene: Scene, template: DocumentTemplate, kind: DocumentKind): DocumentTree {
  const view = buildView(scene);
  const markup = template.run(view, scene.locale.translator);
  return {
    kind,
    audience: template.audience,
    language: scene.locale.tag,
    direction: scene.locale.direction,
    paper: scene.clinic.clinic.paper,
    title: scene.words.plain(template.title),
    colon: scene.words.plain('common.labelled', { label: '', text: '' }),
    furniture: makeFurniture(scene, template, view.open.length),
    blocks: buildBlocks(markup, template.file),
  };
}

function missingStatements(
  tree: DocumentTree,
  scene: Scene,
  template: DocumentTemplate,
): readonly Diagnostic[] {
  // The foot of every page says some of it.
  const { deferral, call } = tree.furniture.footer;
  const said = [...expectedText(tree).map((piece) => piece.text), deferral, call].join('\n');
  return template.required
    .filter((key) => !said.includes(scene.words.plain(key)))
    .map((key) => ({
      code: 'TEMPLATE_STATEMENT_MISSING',
      severity: 'error',
      message: `This document must say the words under ${key}, and does not.`,
      hint: 'Put the statement into the template.',
      path: key,
      span: { file: template.file, line: 1, column: 1 },
    }));
}

function describeMarkup(error: MarkupError): Diagnostic {
  const [file = '', line = ''] = error.origin.split(':');
  return {
    code: error.kind === 'syntax' ? 'TEMPLATE_SYNTAX' : 'TEMPLATE_UNKNOWN_BLOCK',
    severity: 'error',
    message: `What this template emits cannot be read: ${error.message}.`,
    hint: 'Correct the template; DEVELOPERS.md lists the elements.',
    span: { file, line: Number(line) || 1, column: 1 },
  };
}
