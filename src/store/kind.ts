export const documentKinds = ['wearer', 'pattern', 'envelope', 'cloth', 'make', 'settings'] as const;
export type DocumentKind = (typeof documentKinds)[number];

export const isDocumentKind = (value: unknown): value is DocumentKind =>
  (documentKinds as readonly unknown[]).includes(value);
