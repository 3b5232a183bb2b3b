import { completeMeasures, latestMeasures, type MeasureId, type Measures, type Wearer } from '../body/index.ts';
import { type ReachedWorkroom, reachWorkroom } from '../server/index.ts';
import { type DocumentKind, dataFolder, type StoredDocument } from '../store/index.ts';
import { bad, good, type Result } from '../units/index.ts';

/** Runs a command's work with the workroom: through its server where one runs, else opened for as long as the work takes. */
export const withWorkroom = async <T>(
  data: string | undefined,
  work: (door: ReachedWorkroom) => Promise<Result<T>>,
): Promise<Result<T>> => {
  const reached = await reachWorkroom(dataFolder(data));
  if (!reached.ok) return reached;
  try {
    return await work(reached.value);
  } finally {
    await reached.value.close();
  }
};

export const storeInWorkroom = (
  data: string | undefined,
  kind: DocumentKind,
  body: unknown,
): Promise<Result<StoredDocument>> => withWorkroom(data, (door) => door.create(kind, body));

const bodyOf = (document: StoredDocument): Wearer => document.body as unknown as Wearer;

/** A wearer by name (case is ignored) or document id. */
export const findWearer = async (
  door: ReachedWorkroom,
  name: string,
): Promise<Result<{ document: StoredDocument; wearer: Wearer }>> => {
  const documents = await door.list({ kind: 'wearer' });
  if (!documents.ok) return documents;
  const wanted = name.trim().toLowerCase();
  const found = documents.value.find((one) => one.id === name || bodyOf(one).name.trim().toLowerCase() === wanted);
  if (found) return good({ document: found, wearer: bodyOf(found) });
  return bad('cli.wearer-unknown', { name, names: documents.value.map((one) => bodyOf(one).name).join(', ') || '–' });
};

export interface KnownBody {
  readonly measures: Measures;
  readonly estimated: readonly MeasureId[];
  readonly known: Measures;
}

/** A wearer's latest measures, made whole by estimates where she is compared with a survey. */
export const measuresOfWearer = (data: string | undefined, name: string): Promise<Result<KnownBody>> =>
  withWorkroom(data, async (door) => {
    const found = await findWearer(door, name);
    if (!found.ok) return found;
    const known = latestMeasures(found.value.wearer);
    const survey = found.value.wearer.comparedWith;
    if (survey === null) return good({ measures: known, estimated: [], known });
    const { measures, estimated } = completeMeasures(known, survey);
    return good({ measures, estimated, known });
  });
