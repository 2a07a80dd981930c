export { findOpenPoints } from './open-points.ts';
export { composeDocument } from './compose-document.ts';
export type { ComposeInput } from './compose-document.ts';
export { loadTemplates } from './load-templates.ts';
export type { Templates } from './load-templates.ts';
