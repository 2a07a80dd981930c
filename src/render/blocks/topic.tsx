import { View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import type { Paragraph } from '../../model/document.ts';
import { palette } from '../theme.ts';
import type { Theme } from '../theme.ts';
import type { Semantics } from '../unit.ts';
import { Prose, Rule, Words } from './primitives.tsx';
import type { HeadingTag } from './unit-parts.ts';

interface QuestionProps {
  readonly theme: Theme;
  readonly text: string;
  readonly sem: Semantics;
}

/** The rule and the question of a topic. */
export function Question({ theme, text, sem }: QuestionProps): ReactElement {
  const { space, type, width } = theme;
  return (
    <View style={{ width }}>
      {space.topicRule === 0 ? null : <Rule width={width} height={space.topicRule} color={palette.leaf} />}
      <View style={{ paddingTop: space.ruleToQuestion }}>
        <Words theme={theme} text={text} role={type.topic} width={width} setting="balanced" sem={sem} />
      </View>
    </View>
  );
}

interface TopicHeadProps extends Omit<QuestionProps, 'sem'> {
  readonly tag: HeadingTag;
  readonly intro: readonly Paragraph[];
}

/** Rule, question and the sentences that say what is counted; never parted from the first rows. */
export function TopicHead({ theme, text, tag, intro }: TopicHeadProps): ReactElement {
  const { space, width } = theme;
  return (
    <View style={{ width }}>
      <Question theme={theme} text={text} sem={{ tag }} />
      {intro.map((paragraph, index) => (
        <View key={index} style={{ marginTop: index === 0 ? space.questionToIntro : 0 }}>
          <Prose theme={theme} paragraph={paragraph} width={width} />
        </View>
      ))}
    </View>
  );
}
