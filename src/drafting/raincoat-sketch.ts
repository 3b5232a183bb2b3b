import type { Garment } from '../pattern/index.ts';
import { type FlatSketch, hangSleeve, pieceShape } from './sketch.ts';
export const raincoatSketch = (garment: Garment): FlatSketch => ({
  front: [hangSleeve(garment, 'front'), pieceShape(garment, 'front')],
  back: [hangSleeve(garment, 'back'), pieceShape(garment, 'back')],
});
