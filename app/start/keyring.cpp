#include "app/start/keyring.h"

#include <qt6keychain/keychain.h>

#include <QCoreApplication>
#include <QEventLoop>
#include <QThread>
#include <QTimer>

namespace wm::app {
namespace {

constexpr int longest_wait_ms = 60'000;
const QString service = QStringLiteral("witnessmark");

bool in_main_thread() {
  return QCoreApplication::instance() && QThread::currentThread() == QCoreApplication::instance()->thread();
}

/// Whether it came to an end. One that did not is left to end by itself.
bool done(QKeychain::Job* job) {
  QEventLoop wait;
  bool ended = false;
  QObject::connect(job, &QKeychain::Job::finished, &wait, [&] {
    ended = true;
    wait.quit();
  });
  QTimer::singleShot(longest_wait_ms, &wait, &QEventLoop::quit);
  job->start();
  wait.exec();
  return ended;
}

}  // namespace

KeyringAnswer read_keyring(const QString& name) {
  if (!in_main_thread()) return {};
  auto* job = new QKeychain::ReadPasswordJob(service);
  job->setAutoDelete(false);
  job->setKey(name);
  if (!done(job)) return {};
  job->deleteLater();
  if (job->error() == QKeychain::NoError) return {KeyringState::found, job->binaryData()};
  return {job->error() == QKeychain::EntryNotFound ? KeyringState::not_there : KeyringState::out_of_reach,
          {}};
}

bool keep_in_keyring(const QString& name, const QByteArray& bytes) {
  if (!in_main_thread()) return false;
  auto* job = new QKeychain::WritePasswordJob(service);
  job->setAutoDelete(false);
  job->setKey(name);
  job->setBinaryData(bytes);
  if (!done(job)) return false;
  job->deleteLater();
  if (job->error() != QKeychain::NoError) return false;
  const KeyringAnswer kept = read_keyring(name);
  return kept.state == KeyringState::found && kept.bytes == bytes;
}

}  // namespace wm::app
