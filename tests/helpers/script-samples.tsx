import type { ReactElement } from 'react';

import { loadFonts, loadTypefaces } from '../../src/render/fonts.ts';
import { paintPacket } from '../../src/render/paint-packet.ts';
import { setGalleys } from '../../src/render/set-galley.ts';
import { typefacesFor } from '../../src/render/shaping/typefaces.ts';
import { Lines } from '../../src/render/text.tsx';
import { alignStart } from '../../src/render/theme.ts';
import type { Direction } from '../../src/render/theme.ts';

export interface ScriptSample {
  readonly language: string;
  readonly direction: Direction;
  readonly text: string;
}

/** A sentence or two in each script that packets are written in, with figures, brackets, units and Latin names inside. */
export const scriptSamples: readonly ScriptSample[] = [
  {
    language: 'ar',
    direction: 'rtl',
    text: 'تكميم المعدة: يزيل الجراح معظم المعدة (حوالي 80%). اتصلي على 555-0142 أو 555-0177 ليلاً.',
  },
  {
    language: 'ar',
    direction: 'rtl',
    text: 'حدثت مشكلة خطيرة لدى 12 من 1000 شخص خلال 30–45 يوماً؛ وزن Marisela Quenby-Fontaine الآن 118.4 كجم (261 lb). لا بأس، الأطباء هنا.',
  },
  {
    language: 'zh',
    direction: 'ltr',
    text: '袖状胃切除术：外科医生切除大部分胃（约80%）。每1,000人中有12人在30天内出现严重问题。您的体重是118.4公斤（261磅），BMI为44。请致电555-0142，夜间555-0177。',
  },
  {
    language: 'ko',
    direction: 'ltr',
    text: '위소매절제술: 외과 의사가 위의 대부분(약 80%)을 잘라 냅니다. 1,000명 중 12명에게 30일 안에 심각한 문제가 생깁니다. 555-0142로 전화하십시오.',
  },
  {
    language: 'hi',
    direction: 'ltr',
    text: 'स्लीव सर्जरी: सर्जन पेट का ज़्यादातर हिस्सा (लगभग 80%) निकाल देते हैं। 1,000 में से 12 लोगों को 30 दिनों के भीतर गंभीर समस्या होती है। विशेषज्ञ, प्रक्रिया, श्री क्षितिज।',
  },
  {
    language: 'vi',
    direction: 'ltr',
    text: 'Cắt dạ dày hình ống: bác sĩ phẫu thuật lấy đi phần lớn dạ dày (khoảng 80%). Trong 1.000 người, 12 người gặp vấn đề nghiêm trọng. Ợ nóng, thiếu vitamin B12.',
  },
  {
    language: 'ru',
    direction: 'ltr',
    text: 'Рукавная резекция желудка: хирург удаляет большую часть желудка (около 80 %). Из 1000 человек у 12 возникает серьёзное осложнение.',
  },
];

/** Makes every face ready that the samples need. */
export async function loadSampleFonts(): Promise<void> {
  await loadFonts();
  await loadTypefaces(typefacesFor(JSON.stringify(scriptSamples)));
}

function paragraph({ language, direction, text }: ScriptSample): ReactElement {
  return (
    <Lines
      runs={[{ text, weight: 400 }]}
      size={13}
      lineHeight={21}
      width={420}
      setting="filled"
      direction={direction}
      align={alignStart(direction)}
      sem={{ tag: 'P', language }}
    />
  );
}

const geometry = { width: 612, height: 792, margin: 60, contentWidth: 492, bodyTop: 60, bodyHeight: 650 };

/** A page of paragraphs, one a sample. Call loadSampleFonts first. */
export async function paintSamples(samples = scriptSamples): Promise<Uint8Array> {
  const [blocks = []] = await setGalleys([{ width: 420, elements: samples.map(paragraph) }]);
  let top = geometry.bodyTop;
  const body = blocks.map(({ node, height }) => {
    const placed = { node, left: geometry.margin, top };
    top += height + 14;
    return placed;
  });
  const info = {
    title: 'Scripts',
    author: 'Author',
    producer: 'plainleaf test',
    language: 'en',
    createdOn: '2026-11-25',
    identifier: new Uint8Array(16),
  };
  const document = { title: 'Scripts', language: 'en', geometry, pages: [{ body, repeated: [] }] };
  return paintPacket([document], { info, attachments: [] });
}
