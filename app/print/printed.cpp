#include "app/print/printed.h"

#include <QCoreApplication>
#include <QCryptographicHash>

#include "core/ledger/root.h"

namespace wm::app {
namespace {

QString out_but_unsaid() {
  return QCoreApplication::translate("wm::app::Printed",
                                     "The paper is out, but the journal does not say so.");
}

}  // namespace

QString ledger_code(const Session& session) {
  const auto head = session.store().head(session.known());
  return head ? QString::fromStdString(ledger::to_text(ledger::shortened(*head))) : QString();
}

std::string words_digest(const QString& words) {
  return QCryptographicHash::hash(words.toUtf8(), QCryptographicHash::Sha256).toHex().toStdString();
}

Expected<void> note_printed(Session& session, const QString& title, int pages, const QString& words,
                            const std::optional<Numbered>& blank) {
  db::Printed printed{title.toStdString(), pages, words_digest(words)};
  if (blank) {
    printed.form = blank->form.toStdString();
    printed.sheet = blank->sheet;
    printed.sheet_revision = blank->revision;
  }
  return session.commit(db::EnterShopFact{std::move(printed)})
      .map([](const db::Committed&) {})
      .map_error([](Problem problem) {
        problem.what = (out_but_unsaid() + ' ' + QString::fromStdString(problem.what)).toStdString();
        return problem;
      });
}

}  // namespace wm::app
