import { useEffect, useState } from 'react';
import type { Laid } from '../parts/table/laid.ts';

/** Where a photograph is fetched from. */
export const photographAddress = (id: string): string => `/api/photographs/${encodeURIComponent(id)}`;

/** How large a photograph lies on the table, mm along its longer side: about an envelope's height. */
const longest = 260;

/** A photograph as it lies on the table; null until its size is known. */
export const useLaidPhotograph = (id: string | null, label: string): Laid | null => {
  const [size, setSize] = useState<{ readonly id: string; readonly width: number; readonly height: number } | null>(
    null,
  );
  useEffect(() => {
    if (id === null) return;
    const image = new Image();
    image.onload = () => setSize({ id, width: image.naturalWidth, height: image.naturalHeight });
    image.src = photographAddress(id);
    return () => {
      image.onload = null;
    };
  }, [id]);
  if (id === null || size?.id !== id || size.width === 0 || size.height === 0) return null;
  const scale = longest / Math.max(size.width, size.height);
  const [width, height] = [size.width * scale, size.height * scale];
  return {
    drawing: { bounds: { minX: 0, minY: 0, maxX: width, maxY: height }, label, marks: [] },
    subject: `photograph ${id}`,
    photograph: { href: photographAddress(id), width, height },
  };
};
