export { type Backup, lastGoodBackup, listBackups } from './backup.ts';
export { isMendable } from './database.ts';
export type { DocumentDraft, DocumentRevision, RestoreChoice, StoredDocument } from './documents.ts';
export { dataFolder, placesOf } from './folder.ts';
export { type DocumentKind, documentKinds, isDocumentKind } from './kind.ts';
export { checkBody } from './kinds.ts';
export { type Owner, readOwner } from './lock.ts';
export type { Photograph, PhotographType, Picture } from './photographs.ts';
export { type Restored, restoreBackup } from './restore.ts';
export { type Settings, settingsSchema } from './settings.ts';
export {
  type OpenOptions,
  openWorkroom,
  type StartChoice,
  type Workroom,
  type WorkroomFacts,
} from './workroom.ts';
