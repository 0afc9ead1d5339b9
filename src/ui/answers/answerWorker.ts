import { Answerer } from '../../session/experiment/answerer.ts';
import type { AnswerMessage, AskMessage } from './answerMessages.ts';

/** Answers what takes time, in a thread of its own, one question after the other. */
const answerer = new Answerer();

onmessage = ({ data }: MessageEvent<AskMessage>) => {
  const { id, question } = data;
  let reply: AnswerMessage;
  try {
    reply = { id, answer: answerer.answer(question) };
  } catch (error) {
    reply = { id, fault: error instanceof Error ? error.message : String(error) };
  }
  postMessage(reply);
};
