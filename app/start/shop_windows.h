#pragma once
// The windows of one shop's file, one after the other: the first questions, the shop, and the wait while a
// backup takes its place.
#include <QThreadPool>
#include <memory>

#include "app/frame/main_window.h"
#include "app/quiz/station.h"
#include "app/start/first_look_window.h"
#include "app/start/start_page.h"

class QLabel;

namespace wm::app {

class ShopWindows : public QObject {
  Q_OBJECT
 public:
  /// `quiz_station`: nothing but the station is shown.
  ShopWindows(std::string path, db::Store::Clock real_now, db::StoreOptions options,
              bool quiz_station = false);
  /// The folder where it is kept at which server this computer works; empty: nowhere.
  void keep_server_in(const QString& folder) { server_folder_ = folder; }
  ~ShopWindows() override;

  /// What its stores are opened with.
  const db::StoreOptions& options() const { return options_; }
  /// The first start's questions, and then the shop that they make.
  void ask();
  void open(db::Store store);
  /// Opens the shop as it is, read behind a window in which, of a file, somebody can be looked up meanwhile:
  /// for one that takes long to read. A server that is not there is tried again until it is.
  void open_behind();
  FirstLookWindow* first_look() const { return first_look_.get(); }
  /// Null while there is none.
  MainWindow* window() const { return window_.get(); }
  Session* session() const { return session_.get(); }
  QuizStation* station() const { return station_.get(); }

 private:
  /// Writes the ledger's head down outside the store: at the start, once a day, and at the end.
  void keep_head();
  void put_back(const std::string& backup);
  void go_on(const Expected<std::string>& kept);
  void read_behind();
  void take(Expected<db::ReadAhead> ahead);
  void wait_with(const QString& words);
  Expected<db::Store> first_store(const FirstAnswers& answers);
  Expected<db::Store> store_on_server(const ServerAnswers& answers);
  void keep_wait();

  void open_station();
  bool is_quiz_station() const;
  void become_station();

  std::string path_;
  QString server_folder_;
  const db::Store::Clock real_now_;
  db::StoreOptions options_;
  const bool quiz_station_;
  Day head_kept_;  // the shop's day on which keep_head was last called
  std::unique_ptr<Session> session_;
  std::unique_ptr<MainWindow> window_;
  std::unique_ptr<QuizStation> station_;
  std::unique_ptr<StartPage> start_;
  std::unique_ptr<QLabel> waiting_;
  std::unique_ptr<FirstLookWindow> first_look_;
  QThreadPool behind_;
};

}  // namespace wm::app
