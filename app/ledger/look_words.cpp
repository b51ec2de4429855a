#include "app/ledger/look_words.h"

#include "core/time/text.h"

namespace wm::app {
namespace {

QString words(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<int>(text.size())); }
QString time(Instant at) { return words(to_text(at)); }

}  // namespace

QString LookWords::verdict() const {
  return fine() ? tr("Fine: nothing was found that should not be there.")
                : tr("NOT FINE: something is not as it was entered.");
}

QString LookWords::tree() const {
  const auto records = static_cast<int>(report_.head.size - (report_.head.size > 0));
  const QString root = words(ledger::to_text(ledger::shortened(report_.head)));
  if (records == 0) return tr("No record. The root now: %1").arg(root);
  return tr("Records: %1, the last entered %2. The root now: %3")
      .arg(QString::number(records), time(report_.head.at), root);
}

QString LookWords::checkouts() const {
  const verify::CheckoutCount& count = report_.checkouts;
  QString out = tr("Check-outs with a signature that holds: %1").arg(count.held);
  if (count.verified_before > 0)
    out +=
        tr(", and %1 that were verified before and lie under a root that holds").arg(count.verified_before);
  return out + tr(". Without a signature: %1 (%2 from paper, %3 imported, %4 entered here).")
                   .arg(count.paper + count.imported + count.unsigned_here)
                   .arg(count.paper)
                   .arg(count.imported)
                   .arg(count.unsigned_here);
}

QString LookWords::root(const verify::RootAnswer& answer) const {
  const auto records = static_cast<qlonglong>(answer.known.head.size) - 1;
  QString out = records == 1 ? tr("%1 holds: record 1 is as when it was written down")
                             : tr("%1 holds: records 1 to %2 are as when it was written down");
  out = records == 1 ? out.arg(words(answer.known.name)) : out.arg(words(answer.known.name)).arg(records);
  if (answer.known.full)
    out += tr(", %1, signed by the key %2")
               .arg(time(answer.known.full->head.at), words(ledger::to_hex(answer.known.full->key)));
  return out + '.';
}

QStringList LookWords::roots() const {
  QStringList out;
  const verify::RootAnswer* own = nullptr;
  for (const verify::RootAnswer& answer : report_.roots) {
    if (answer.outcome != verify::Outcome::holds) continue;
    if (answer.known.own)
      own = &answer;
    else
      out << root(answer);
  }
  if (own) out << root(*own);
  return out;
}

QString LookWords::finding(const verify::Finding& one) const {
  const QString place = words(one.place), says = words(one.says);
  QString out;
  switch (one.kind) {
    case verify::FindingKind::altered:
      out = tr("%1 does not hold: %2").arg(place, says);
      break;
    case verify::FindingKind::cut_off:
      out = tr("%1: the end was cut off: there are %2").arg(place, says);
      break;
    default:
      out = place + ": " + says;
  }
  if (!one.should.empty()) out += tr("; should be: %1").arg(words(one.should));
  return out + '.';
}

QStringList LookWords::findings() const {
  QStringList out;
  for (const verify::Finding& one : report_.findings.kept()) out << finding(one);
  if (report_.findings.more() > 0) out << tr("And %1 more of them.").arg(report_.findings.more());
  return out;
}

QString LookWords::unknown() const {
  std::uint64_t holds = 0;
  for (const verify::RootAnswer& answer : report_.roots)
    if (answer.outcome == verify::Outcome::holds) holds = answer.known.head.size;
  if (report_.roots.empty())
    return tr(
        "Not known without a root from outside the file: whether all of it was made anew by somebody who can "
        "write the file, or its end cut off. A root stands at the foot of every printed paper.");
  if (holds < report_.head.size)
    return tr("Not known without a later root: whether what came after record %1 was made anew or cut off.")
        .arg(holds > 0 ? holds - 1 : 0);
  return {};
}

}  // namespace wm::app
